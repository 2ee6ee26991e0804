package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lower bounds against what they bound. */
class MoatsTest {

    static LongStream seeds() {
        return Seeds.upTo(80);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverBoundMoreThanTheLeastTreeNorCutOffItsEdges(long seed) {
        Sketch sketch = GridSketch.rich(seed, 5 + (int) (seed % 8), 3 + (int) (seed % 5), 1 + (int) (seed / 5 % 4));
        Cores.findCore(sketch)
                .ifPresent(core -> new LeastTreeSearch(core, Shortcuts.NONE, Meter.of(Limits.none()), Optional.empty())
                        .findTree()
                        .ifPresent(tree -> {
                            check(core, tree, Moats.of(core));
                            check(core, tree, Moats.of(core).deeper(core, 3));
                        }));
    }

    private static void check(Core core, CoreTree tree, Moats moats) {
        long weight = tree.cost().weight();
        assertThat(moats.lowerBound()).isBetween(1L, weight);
        long[] detours = moats.detours();
        for (int i = 0; i < tree.size(); i++) {
            assertThat(moats.lowerBound() + detours[tree.edge(i)]).isLessThanOrEqualTo(weight);
        }
        // A single leaf that hangs where it lands in the least tree is a state of that tree.
        Bound bound = new Bound(moats, weight);
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            if (leaf != core.root()) {
                bound.begin(1 << leaf);
                int node = tree.landing(leaf);
                assertThat(bound.isBeyond(core.leaf(leaf).costAt(node).weight(), node))
                        .isFalse();
            }
        }
    }
}
