package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the map of Java. */
class KindsTest {

    static LongStream seeds() {
        return Seeds.upTo(20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void areTheSameForStretchesThatCostTheSameAndNoOthers(long seed) {
        Core core = Cores.findCore(GridSketch.rich(seed, 40, 4, 4)).orElseThrow();
        int grades = core.need().grades();
        StretchPool pool = new StretchPool(grades, core.edges());
        Kinds kinds = new Kinds(pool);
        Map<List<Long>, Integer> peer = new HashMap<>();
        List<Integer> found = new ArrayList<>();
        for (int edge = 0; edge < core.edges(); edge++) {
            int kind = kinds.of(pool.addEdge(core, edge));
            assertThat(kind).isEqualTo(peer.computeIfAbsent(costs(core, edge), ignored -> peer.size()));
            found.add(kind);
        }
        assertThat(peer).hasSizeGreaterThan(20).hasSizeLessThan(core.edges());
        for (int grade = 0; grade < grades; grade++) {
            long[] weights = kinds.weights(grade);
            long[] extents = kinds.extents(grade);
            for (int edge = 0; edge < core.edges(); edge++) {
                assertThat(weights[found.get(edge)]).isEqualTo(core.edgeWeight(edge, grade));
                assertThat(extents[found.get(edge)]).isEqualTo(core.edgeExtent(edge, grade));
            }
        }
    }

    private static List<Long> costs(Core core, int edge) {
        List<Long> costs = new ArrayList<>();
        for (int grade = 0; grade < core.need().grades(); grade++) {
            costs.add(core.edgeWeight(edge, grade));
            costs.add(core.edgeExtent(edge, grade));
        }
        return costs;
    }
}
