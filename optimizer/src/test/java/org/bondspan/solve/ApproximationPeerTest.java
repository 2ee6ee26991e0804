package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.LongStream;
import org.jgrapht.alg.interfaces.SteinerTreeAlgorithm;
import org.jgrapht.alg.steiner.KouMarkowskyBermanAlgorithm;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.WeightedMultigraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against JGraphT's approximation (L. Kou, G. Markowsky, L. Berman, "A fast algorithm for Steiner trees", Acta
 * Informatica 15, 1981), which never weighs more than twice the least tree and never less than it.
 */
class ApproximationPeerTest {

    static LongStream seeds() {
        return Seeds.upTo(60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void isNoHeavierThanTheApproximationAndAtLeastHalf(long seed) {
        Sketch sketch = GridSketch.plain(seed, 12, 7, 1);
        WeightedMultigraph<Integer, DefaultWeightedEdge> graph = new WeightedMultigraph<>(DefaultWeightedEdge.class);
        for (Sketch.Stretch edge : sketch.edges()) {
            graph.addVertex(edge.a());
            graph.addVertex(edge.b());
            graph.setEdgeWeight(graph.addEdge(edge.a(), edge.b()), (double) edge.length());
        }
        Set<Integer> terminals = new HashSet<>();
        sketch.terminals().forEach(ways -> terminals.add(ways.get(0).node()));
        SteinerTreeAlgorithm.SteinerTree<DefaultWeightedEdge> peer =
                new KouMarkowskyBermanAlgorithm<>(graph).getSteinerTree(terminals);
        long length = ((Outcome.Least) Solver.solve(sketch.problem())).tree().length();
        assertThat((double) length).isLessThanOrEqualTo(peer.getWeight());
        assertThat(2.0 * length).isGreaterThanOrEqualTo(peer.getWeight());
    }
}
