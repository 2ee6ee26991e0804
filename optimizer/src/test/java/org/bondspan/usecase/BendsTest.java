package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.site.Level;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.usecase.Pen.Spot;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No run has a bend that costs nothing to remove: compared with every way of the same length past the other copper. */
class BendsTest {
    private record State(Spot at, int direction) {}

    private record Label(int feet, int bends, State state) implements Comparable<Label> {
        @Override
        public int compareTo(Label other) {
            return feet != other.feet ? Integer.compare(feet, other.feet) : Integer.compare(bends, other.bends);
        }
    }

    static LongStream blocks() {
        return SeedBlocks.upTo(6);
    }

    /** On an empty floor every run between two places is straight or bends once. */
    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void aRunOnAnEmptyFloorBendsOnceAtMost(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            Random random = new Random(seed);
            Routed routed = Routed.of(Sites.openFloor(30, 20, """
                    "services": [{"id": "S", $copper(350 kcmil), $at(%d, %d)}],
                    "electrodes": [{"id": "R", $rod, $at(%d, %d)}]""".formatted(
                            random.nextInt(31), random.nextInt(21), random.nextInt(31), random.nextInt(21))));
            routed.layout()
                    .conductors()
                    .forEach(conductor ->
                            assertThat(conductor.line()).as("seed %d", seed).hasSizeLessThanOrEqualTo(3));
        });
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void noRunBendsMoreThanItMust(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            Site site = SiteReader.parse(RandomSites.ofOneLevel(seed).sketch().write(Pen.PLAIN), "bends");
            Layout layout = RouteSite.of(site);
            if (layout.status() != Status.IMPOSSIBLE
                    && site.listPaths(CopperLine.class).isEmpty()) {
                for (Conductor conductor : layout.conductors()) {
                    List<Spot> walk = walk(conductor);
                    if (walk.size() > 1 && walk.stream().allMatch(spot -> spot.z() == 0)) {
                        int least = fewestBends(site.levels().get(0), walk, taken(layout, conductor));
                        assertThat(bends(walk))
                                .as("seed %d: %s", seed, conductor)
                                .isEqualTo(least);
                    }
                }
            }
        });
    }

    private static List<Spot> walk(Conductor conductor) {
        List<Spot> walk = new ArrayList<>();
        conductor.line().stream().map(RunCheck::spot).forEach(next -> {
            Spot at = walk.isEmpty() ? next : walk.get(walk.size() - 1);
            if (walk.isEmpty()) {
                walk.add(next);
            }
            while (!at.equals(next)) {
                at = new Spot(
                        at.x() + Integer.signum(next.x() - at.x()),
                        at.y() + Integer.signum(next.y() - at.y()),
                        at.z() + Integer.signum(next.z() - at.z()));
                walk.add(at);
            }
        });
        return walk;
    }

    /** Every foot of the other conductors. */
    private static Set<Spot> taken(Layout layout, Conductor conductor) {
        Set<Spot> taken = new HashSet<>();
        layout.conductors().stream()
                .filter(other -> !other.equals(conductor))
                .forEach(other -> taken.addAll(walk(other)));
        return taken;
    }

    private static int bends(List<Spot> walk) {
        int bends = 0;
        for (int i = 2; i < walk.size(); i++) {
            boolean before = walk.get(i - 2).x() == walk.get(i - 1).x();
            boolean after = walk.get(i - 1).x() == walk.get(i).x();
            bends += before == after ? 0 : 1;
        }
        return bends;
    }

    /** Over all ways between the two ends that are as short, on the open floor past what is taken. */
    private static int fewestBends(Level level, List<Spot> walk, Set<Spot> taken) {
        Spot start = walk.get(0);
        Spot end = walk.get(walk.size() - 1);
        PriorityQueue<Label> queue = new PriorityQueue<>();
        Map<State, Label> best = new HashMap<>();
        queue.add(new Label(0, 0, new State(start, -1)));
        while (!queue.isEmpty()) {
            Label label = queue.remove();
            if (label.state().at().equals(end)) {
                return label.feet() == walk.size() - 1 ? label.bends() : Integer.MAX_VALUE;
            }
            for (int direction = 0; direction < 4; direction++) {
                Spot at = label.state().at();
                int step = direction < 2 ? 1 : -1;
                Spot next = direction % 2 == 0 ? Spot.of(at.x() + step, at.y()) : Spot.of(at.x(), at.y() + step);
                boolean turns = label.state().direction() >= 0 && label.state().direction() % 2 != direction % 2;
                Label reached =
                        new Label(label.feet() + 1, label.bends() + (turns ? 1 : 0), new State(next, direction));
                boolean free = next.equals(end) || !taken.contains(next);
                if (free && Raster.isOpenRun(level, at, next) && isBetter(reached, best)) {
                    best.put(reached.state(), reached);
                    queue.add(reached);
                }
            }
        }
        return Integer.MAX_VALUE;
    }

    private static boolean isBetter(Label label, Map<State, Label> best) {
        Label known = best.get(label.state());
        return known == null || label.compareTo(known) < 0;
    }
}
