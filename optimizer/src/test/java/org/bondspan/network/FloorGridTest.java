package org.bondspan.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Permitted runs against places tried one by one in the geometry library, and against floors drawn by hand. */
class FloorGridTest {

    /** A run from one crossing to the next. */
    private record GridRun(PlanPoint from, PlanPoint to) {}

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 120) : LongStream.of(only);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void permitsWhatPlacesTriedPermitOnOrthogonalFloors(long seed) {
        Random random = new Random(seed);
        List<PlanPoint> outline = RandomPolygons.orthogonal(random);
        List<List<PlanPoint>> areas = Stream.generate(() -> RandomPolygons.orthogonal(random))
                .limit(random.nextInt(4))
                .toList();
        compare(random, outline, areas);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void permitsWhatPlacesTriedPermitOnObliqueFloors(long seed) {
        Random random = new Random(seed);
        List<PlanPoint> outline = RandomPolygons.oblique(random);
        List<List<PlanPoint>> areas = Stream.generate(
                        () -> random.nextBoolean() ? RandomPolygons.oblique(random) : RandomPolygons.orthogonal(random))
                .limit(random.nextInt(4))
                .toList();
        compare(random, outline, areas);
    }

    private static void compare(Random random, List<PlanPoint> outline, List<List<PlanPoint>> areas) {
        List<PlanPoint> places = new ArrayList<>(outline);
        areas.forEach(places::addAll);
        places.add(new PlanPoint(random.nextInt(RandomPolygons.SPAN), random.nextInt(RandomPolygons.SPAN)));
        long[] xs = places.stream().mapToLong(PlanPoint::x).sorted().distinct().toArray();
        long[] ys = places.stream().mapToLong(PlanPoint::y).sorted().distinct().toArray();
        Set<GridRun> permitted = permitted(level(outline, areas), xs, ys);
        allRuns(xs, ys)
                .forEach(run -> assertThat(permitted.contains(run))
                        .as("%s on %s without %s", run, outline, areas)
                        .isEqualTo(isPermitted(run, outline, areas)));
    }

    private static boolean isPermitted(GridRun run, List<PlanPoint> outline, List<List<PlanPoint>> areas) {
        SampledStretch stretch = new SampledStretch(run.from, run.to);
        return stretch.liesInClosed(outline) && areas.stream().noneMatch(stretch::touchesInside);
    }

    private static Stream<GridRun> allRuns(long[] xs, long[] ys) {
        Stream<GridRun> east = IntStream.range(1, xs.length)
                .boxed()
                .flatMap(i -> LongStream.of(ys)
                        .mapToObj(y -> new GridRun(new PlanPoint(xs[i - 1], y), new PlanPoint(xs[i], y))));
        Stream<GridRun> north = IntStream.range(1, ys.length)
                .boxed()
                .flatMap(j -> LongStream.of(xs)
                        .mapToObj(x -> new GridRun(new PlanPoint(x, ys[j - 1]), new PlanPoint(x, ys[j]))));
        return Stream.concat(east, north);
    }

    private static Set<GridRun> permitted(Level level, long[] xs, long[] ys) {
        NetworkArrays network = new NetworkArrays();
        new FloorGrid(level, xs, ys).addTo(network, 0, 0);
        return IntStream.range(0, network.edgeCount())
                .mapToObj(edge -> new GridRun(network.at(network.from(edge)), network.at(network.to(edge))))
                .collect(Collectors.toSet());
    }

    private static Level level(List<PlanPoint> outline, List<List<PlanPoint>> areas) {
        List<ClosedArea> closed = IntStream.range(0, areas.size())
                .mapToObj(i -> new ClosedArea("A" + i, areas.get(i)))
                .toList();
        return new Level("L1", Length.ZERO, outline, Optional.of(Length.ZERO), closed, List.of());
    }

    /** A floor of 6 by 4 with the given areas, on the grid of its and their vertices: its permitted runs, drawn. */
    private static String draw(List<PlanPoint> outline, List<List<PlanPoint>> areas) {
        TreeSet<Long> xs = new TreeSet<>();
        TreeSet<Long> ys = new TreeSet<>();
        Stream.concat(outline.stream(), areas.stream().flatMap(List::stream)).forEach(place -> {
            xs.add(place.x());
            ys.add(place.y());
        });
        List<Long> columns = List.copyOf(xs);
        Set<GridRun> permitted = permitted(level(outline, areas), array(xs), array(ys));
        StringBuilder drawing = new StringBuilder();
        for (Long y : ys.descendingSet()) {
            for (int i = 0; i < columns.size(); i++) {
                drawing.append('+');
                if (i + 1 < columns.size()) {
                    GridRun east = new GridRun(new PlanPoint(columns.get(i), y), new PlanPoint(columns.get(i + 1), y));
                    drawing.append(permitted.contains(east) ? "---" : "   ");
                }
            }
            drawing.append('\n');
            Long below = ys.lower(y);
            if (below != null) {
                for (Long x : columns) {
                    GridRun north = new GridRun(new PlanPoint(x, below), new PlanPoint(x, y));
                    drawing.append(permitted.contains(north) ? "|   " : "    ");
                }
                drawing.append('\n');
            }
        }
        return drawing.toString().lines().map(String::stripTrailing).reduce("", (a, b) -> a + b + "\n");
    }

    private static long[] array(Set<Long> values) {
        return values.stream().mapToLong(Long::longValue).toArray();
    }

    private static List<PlanPoint> box(long west, long south, long east, long north) {
        return List.of(
                new PlanPoint(west, south),
                new PlanPoint(east, south),
                new PlanPoint(east, north),
                new PlanPoint(west, north));
    }

    @Test
    void letsCopperRunRoundAnAreaAndAlongItsEdges() {
        assertThat(draw(box(0, 0, 6, 4), List.of(box(2, 1, 4, 3)))).isEqualTo("""
                +---+---+---+
                |   |   |   |
                +---+---+---+
                |   |   |   |
                +---+---+---+
                |   |   |   |
                +---+---+---+
                """);
    }

    @Test
    void letsCopperRunAlongAnEdgeThatTwoAreasShare() {
        assertThat(draw(box(0, 0, 6, 4), List.of(box(2, 0, 4, 4), box(4, 0, 6, 4))))
                .isEqualTo("""
                +---+---+---+
                |   |   |   |
                +---+---+---+
                """);
    }

    @Test
    void closesAnEdgeThatLiesInsideAnotherArea() {
        assertThat(draw(box(0, 0, 6, 4), List.of(box(1, 0, 3, 4), box(2, 0, 5, 4))))
                .isEqualTo("""
                +---+---+---+---+---+
                |   |           |   |
                +---+---+---+---+---+
                """);
    }

    @Test
    void staysWithinANotchedOutline() {
        List<PlanPoint> notched = List.of(
                new PlanPoint(0, 0),
                new PlanPoint(6, 0),
                new PlanPoint(6, 4),
                new PlanPoint(4, 4),
                new PlanPoint(4, 2),
                new PlanPoint(2, 2),
                new PlanPoint(2, 4),
                new PlanPoint(0, 4));
        assertThat(draw(notched, List.of())).isEqualTo("""
                +---+   +---+
                |   |   |   |
                +---+---+---+
                |   |   |   |
                +---+---+---+
                """);
    }

    @Test
    void anAreaMayReachBeyondTheOutline() {
        assertThat(draw(box(0, 0, 6, 4), List.of(box(4, -1, 8, 2)))).isEqualTo("""
                +---+---+   +
                |   |   |
                +---+---+   +
                |   |
                +---+   +   +

                +   +   +   +
                """);
    }

    @Test
    void anAreaLikeTheOutlineLeavesItsEdgesAlone() {
        assertThat(draw(box(0, 0, 6, 4), List.of(box(0, 0, 6, 4), box(2, 1, 4, 3))))
                .isEqualTo("""
                +---+---+---+
                |           |
                +   +   +   +
                |           |
                +   +   +   +
                |           |
                +---+---+---+
                """);
    }

    @Test
    void anAreaAroundEverythingLeavesNothing() {
        NetworkArrays network = new NetworkArrays();
        FloorGrid floor = new FloorGrid(
                level(box(0, 0, 6, 4), List.of(box(-1, -1, 7, 5))), new long[] {-1, 0, 6, 7}, new long[] {-1, 0, 4, 5});
        floor.addTo(network, 0, 0);
        assertThat(network.edgeCount()).isZero();
        assertThat(network.nodeCount()).isZero();
        assertThat(floor.nodeAt(new PlanPoint(0, 0))).isEqualTo(FloorGrid.NONE);
    }

    @Test
    void hasANodeWhereAPermittedRunMeetsAndListsThemAlongALine() {
        NetworkArrays network = new NetworkArrays();
        FloorGrid floor = new FloorGrid(
                level(box(0, 0, 6, 4), List.of(box(-1, 1, 5, 3))), new long[] {-1, 0, 5, 6}, new long[] {0, 1, 2, 3, 4
                });
        floor.addTo(network, 0, 77);
        assertThat(floor.nodeAt(new PlanPoint(0, 2))).as("inside the area").isEqualTo(FloorGrid.NONE);
        assertThat(floor.nodeAt(new PlanPoint(-1, 1))).as("beyond the outline").isEqualTo(FloorGrid.NONE);
        assertThat(floor.nodeAt(new PlanPoint(1, 1))).as("no crossing").isEqualTo(FloorGrid.NONE);
        int corner = floor.nodeAt(new PlanPoint(5, 3));
        assertThat(network.at(corner)).isEqualTo(new PlanPoint(5, 3));
        assertThat(network.elevation(corner)).isEqualTo(77);
        assertThat(floor.placesAlong(new PlanSegment(new PlanPoint(0, 4), new PlanPoint(0, 0))))
                .containsExactly(new PlanPoint(0, 0), new PlanPoint(0, 1), new PlanPoint(0, 3), new PlanPoint(0, 4));
        assertThat(floor.placesAlong(new PlanSegment(new PlanPoint(1, 3), new PlanPoint(5, 3))))
                .containsExactly(new PlanPoint(5, 3));
        assertThat(floor.placesAlong(new PlanSegment(new PlanPoint(2, 3), new PlanPoint(4, 3))))
                .isEmpty();
    }

    @Test
    void runsAreAsLongAsTheyAreDrawn() {
        NetworkArrays network = new NetworkArrays();
        new FloorGrid(level(box(0, 0, 6, 4), List.of()), new long[] {0, 6}, new long[] {0, 4}).addTo(network, 0, 0);
        assertThat(IntStream.range(0, network.edgeCount())
                        .mapToObj(edge -> network.direction(edge) + " " + network.length(edge)))
                .containsExactlyInAnyOrder(
                        Direction.X + " 6", Direction.X + " 6", Direction.Y + " 4", Direction.Y + " 4");
    }
}
