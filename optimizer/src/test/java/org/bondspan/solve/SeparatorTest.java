package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Nodes settled in any order: the separator tells that leaves are parted at the very node after which they are. */
class SeparatorTest {

    static LongStream seeds() {
        return Seeds.upTo(150);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void tellsWhenTheOthersAreParted(long seed) {
        Sketch sketch = GridSketch.rich(seed, 5 + (int) (seed % 6), 4 + (int) (seed % 3), 2);
        Cores.findCore(sketch).ifPresent(core -> compare(core, new Random(seed)));
    }

    private static void compare(Core core, Random random) {
        long within = core.everything() & ~(1L << random.nextInt(core.leaves()));
        int grade = core.need().grades() - 1;
        Labels labels = new Labels(core.nodes());
        labels.clear();
        Separator separator = new Separator(core, labels);
        Set<Integer> settled = new HashSet<>();
        boolean joined = separator.begin(within, grade);
        assertThat(joined).isEqualTo(isJoined(core, within, grade, settled));
        for (int node : order(core, random)) {
            if (!joined) {
                return;
            }
            labels.offer(node, 0, 0, -1);
            labels.settle(node);
            settled.add(node);
            joined = separator.settle(node);
            assertThat(joined).as("after %d nodes", settled.size()).isEqualTo(isJoined(core, within, grade, settled));
        }
    }

    /** Now at random, now growing from one node, as searches do; landings of the leaves late. */
    private static List<Integer> order(Core core, Random random) {
        Set<Integer> landings = new HashSet<>();
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            for (int i = 0; i < core.leaf(leaf).size(); i++) {
                landings.add(core.leaf(leaf).node(i));
            }
        }
        List<Integer> nodes = new ArrayList<>(IntStream.range(0, core.nodes())
                .filter(v -> !landings.contains(v))
                .boxed()
                .toList());
        Collections.shuffle(nodes, random);
        if (random.nextBoolean() && !nodes.isEmpty()) {
            int middle = core.origin(nodes.get(0));
            nodes.sort((a, b) -> Integer.compare(Math.abs(core.origin(a) - middle), Math.abs(core.origin(b) - middle)));
        }
        List<Integer> last = new ArrayList<>(landings);
        Collections.shuffle(last, random);
        nodes.addAll(last);
        return nodes;
    }

    private static boolean isJoined(Core core, long within, int grade, Set<Integer> settled) {
        for (int start = 0; start < core.nodes(); start++) {
            if (!settled.contains(start)) {
                Set<Integer> piece = new HashSet<>();
                collect(core, grade, settled, start, piece);
                boolean touchesAll = true;
                for (long left = within; left != 0; left &= left - 1) {
                    Leaf leaf = core.leaf(Long.numberOfTrailingZeros(left));
                    touchesAll &= IntStream.range(0, leaf.size()).anyMatch(i -> piece.contains(leaf.node(i)));
                }
                if (touchesAll) {
                    return true;
                }
            }
        }
        return false;
    }

    private static void collect(Core core, int grade, Set<Integer> settled, int node, Set<Integer> piece) {
        if (settled.contains(node) || !piece.add(node)) {
            return;
        }
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            if (core.weights(grade)[core.kind(arc)] >= 0) {
                collect(core, grade, settled, core.arcEnd(arc), piece);
            }
        }
    }
}
