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
                .ifPresent(core -> plainly(core).ifPresent(tree -> {
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
        checkStates(core, tree, moats);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverLeaveOutWhatALeastTreeUses(long seed) {
        Sketch sketch = GridSketch.rich(seed, 6 + (int) (seed % 9), 3 + (int) (seed % 5), 1 + (int) (seed / 5 % 4));
        Cores.findCore(sketch)
                .ifPresent(core -> plainly(core).ifPresent(tree -> {
                    Moats moats = Moats.of(core);
                    SubCore part = new Narrowing(core, moats).part(tree.cost().weight());
                    CoreTree inPart = plainly(part.core()).orElseThrow();
                    assertThat(part.findInWhole(inPart).map(CoreTree::cost)).contains(tree.cost());
                    checkStates(part.core(), inPart, moats.within(part.core()));
                }));
    }

    private static Optional<CoreTree> plainly(Core core) {
        return new LeastTreeSearch(core, Shortcuts.NONE, Meter.of(Limits.none()), Optional.empty()).findTree();
    }

    /** What hangs at a node of the least tree, or at the far end of the stretch that leaves it, is a state of it. */
    private static void checkStates(Core core, CoreTree tree, Moats moats) {
        Bound bound = new Bound(core, moats);
        bound.limitTo(tree.cost().weight());
        Hanging hanging = new Hanging(core, tree);
        long whole = hanging.walk(tree.landing(core.root()), -1, (side, node, weight) -> {
            bound.begin(side);
            assertThat(bound.isBeyond(weight, node)).isFalse();
        });
        Cost ofRoot = core.leaf(core.root()).costAt(tree.landing(core.root()));
        assertThat(whole + ofRoot.weight()).isEqualTo(tree.cost().weight());
    }

    private interface State {
        void check(int side, int node, long weight);
    }

    /** Goes up a tree from the root and adds up what hangs at each node. */
    private static final class Hanging {
        private final Core core;
        private final CoreTree tree;
        private int side;

        Hanging(Core core, CoreTree tree) {
            this.core = core;
            this.tree = tree;
        }

        /** Weight of what hangs at a node that was come to by an edge of the tree; its leaves are left in the side. */
        private long walk(int node, int cameBy, State state) {
            int here = 0;
            int parts = 0;
            long weight = 0;
            for (int leaf = 0; leaf < core.leaves(); leaf++) {
                if (leaf != core.root() && tree.landing(leaf) == node) {
                    here |= 1 << leaf;
                    weight += core.leaf(leaf).costAt(node).weight();
                    parts++;
                }
            }
            for (int i = 0; i < tree.size(); i++) {
                int edge = tree.edge(i);
                if (i != cameBy && (core.edgeEnd(edge, 0) == node || core.edgeEnd(edge, 1) == node)) {
                    int end = core.edgeEnd(edge, 0) + core.edgeEnd(edge, 1) - node;
                    long behind = walk(end, i, state) + core.edgeWeight(edge, tree.grade(i));
                    state.check(side, node, behind);
                    here |= side;
                    weight += behind;
                    parts++;
                }
            }
            weight += (parts - 1) * core.tapWeight(node);
            state.check(here, node, weight);
            side = here;
            return weight;
        }
    }
}
