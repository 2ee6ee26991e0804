package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the blocks that JGraphT finds. */
class BlocksTest {

    static LongStream seeds() {
        return Seeds.upTo(300);
    }

    /** As sets of edges. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void areThoseOfJGraphT(long seed) {
        Core core = core(seed);
        Graph<Integer, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
        IntStream.range(0, core.nodes()).forEach(graph::addVertex);
        Map<DefaultEdge, Integer> number = new HashMap<>();
        for (int edge = 0; edge < core.edges(); edge++) {
            number.put(graph.addEdge(core.edgeEnd(edge, 0), core.edgeEnd(edge, 1)), edge);
        }
        Blocks blocks = new Blocks(core);
        assertThat(blocks.isInOnePiece()).isEqualTo(new ConnectivityInspector<>(graph).isConnected());
        if (blocks.isInOnePiece()) {
            Set<Set<Integer>> expected = new BiconnectivityInspector<>(graph)
                    .getBlocks().stream()
                            .map(block ->
                                    block.edgeSet().stream().map(number::get).collect(Collectors.toSet()))
                            .filter(edges -> !edges.isEmpty())
                            .collect(Collectors.toSet());
            Map<Integer, Set<Integer>> found = new HashMap<>();
            for (int edge = 0; edge < core.edges(); edge++) {
                found.computeIfAbsent(blocks.ofEdge(edge), block -> new HashSet<>())
                        .add(edge);
            }
            assertThat(new HashSet<>(found.values())).isEqualTo(expected);
            assertThat(found).hasSize(blocks.count());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void areNumberedOutwards(long seed) {
        Blocks blocks = new Blocks(core(seed));
        for (int block = 0; block < blocks.count(); block++) {
            assertThat(blocks.up(blocks.top(block))).isLessThan(block);
        }
    }

    /** A few more edges than a spanning tree; every node a landing, so that none is taken out beforehand. */
    private static Core core(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int nodes = random.nextInt(2, 40);
        RoutingProblem.Builder builder = RoutingProblem.builder(1);
        builder.addPlaces(nodes);
        builder.addTariff(1);
        for (int v = 1; v < nodes; v++) {
            builder.addEdge(v, random.nextInt(50) == 0 ? v : random.nextInt(v), 1, 0);
        }
        for (int more = random.nextInt(nodes); more > 0; more--) {
            builder.addEdge(random.nextInt(nodes), random.nextInt(nodes), 1, 0);
        }
        for (int t = 0; t < 2; t++) {
            builder.addTerminal();
            for (int v = 0; v < nodes; v++) {
                builder.attach(t, v, 1, 0);
            }
        }
        RoutingProblem problem = builder.build(CutNeed.ofPairs(new int[2][2]));
        Spots spots = Spots.of(problem);
        return new Presolve(problem, spots, new Landings(problem, spots).leaves())
                .findCore(Shortcuts.NONE)
                .orElseThrow();
    }
}
