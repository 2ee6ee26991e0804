package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.jgrapht.alg.spanning.PrimMinimumSpanningTree;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Rectilinear trees on the grid of lines through the points, which contains a least one (M. Hanan, "On Steiner's
 * problem with rectilinear distance", SIAM Journal on Applied Mathematics 14, 1966).
 */
class RectilinearTest {

    private record Point(int x, int y) {
        int distance(Point other) {
            return Math.abs(x - other.x) + Math.abs(y - other.y);
        }
    }

    static LongStream seeds() {
        return Seeds.upTo(40);
    }

    @Test
    void joinsTheCornersOfAUnitSquareWithThree() {
        assertThat(steiner(List.of(new Point(0, 0), new Point(1, 0), new Point(0, 1), new Point(1, 1))))
                .isEqualTo(3);
    }

    /** The points of the plus sign, for which the ratio of F. K. Hwang's bound is met. */
    @Test
    void joinsTheEndsOfAPlusSignWithFour() {
        List<Point> plus = List.of(new Point(1, 0), new Point(1, 2), new Point(0, 1), new Point(2, 1));
        assertThat(steiner(plus)).isEqualTo(4);
        assertThat(spanning(plus)).isEqualTo(6);
    }

    /**
     * F. K. Hwang, "On Steiner minimal trees with rectilinear distance", SIAM Journal on Applied Mathematics 30, 1976.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void isNeverBelowTwoThirdsOfTheSpanningTree(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Point> points = IntStream.range(0, random.nextInt(3, 10))
                .mapToObj(i -> new Point(random.nextInt(40), random.nextInt(40)))
                .distinct()
                .toList();
        long steiner = steiner(points);
        assertThat(steiner).isLessThanOrEqualTo(spanning(points));
        assertThat(3 * steiner).isGreaterThanOrEqualTo(2 * spanning(points));
    }

    private static long steiner(List<Point> points) {
        int[] xs = points.stream().mapToInt(Point::x).sorted().distinct().toArray();
        int[] ys = points.stream().mapToInt(Point::y).sorted().distinct().toArray();
        List<Sketch.Stretch> edges = new ArrayList<>();
        List<List<Sketch.Landing>> terminals = new ArrayList<>();
        for (int i = 0; i < xs.length; i++) {
            for (int j = 0; j < ys.length; j++) {
                int node = i * ys.length + j;
                if (i + 1 < xs.length) {
                    edges.add(new Sketch.Stretch(node, node + ys.length, xs[i + 1] - xs[i], 0));
                }
                if (j + 1 < ys.length) {
                    edges.add(new Sketch.Stretch(node, node + 1, ys[j + 1] - ys[j], 0));
                }
                if (points.contains(new Point(xs[i], ys[j]))) {
                    terminals.add(List.of(new Sketch.Landing(node, 0, 0)));
                }
            }
        }
        List<Boolean> metal = new ArrayList<>();
        IntStream.range(0, xs.length * ys.length).forEach(v -> metal.add(false));
        CutNeed need = CutNeed.ofPairs(new int[terminals.size()][terminals.size()]);
        Sketch sketch = new Sketch(1, metal, List.of(List.of(1L)), edges, terminals, need);
        return ((Outcome.Least) Solver.solve(sketch.problem())).tree().weight();
    }

    private static long spanning(List<Point> points) {
        SimpleWeightedGraph<Point, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        points.forEach(graph::addVertex);
        for (int i = 0; i < points.size(); i++) {
            for (int j = 0; j < i; j++) {
                DefaultWeightedEdge edge = graph.addEdge(points.get(i), points.get(j));
                graph.setEdgeWeight(edge, points.get(i).distance(points.get(j)));
            }
        }
        return Math.round(new PrimMinimumSpanningTree<>(graph).getSpanningTree().getWeight());
    }
}
