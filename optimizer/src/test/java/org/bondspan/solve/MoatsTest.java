package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.BitSet;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lower bounds against what they bound, and against their own definition. */
class MoatsTest {

    private static final Meter ENDLESS = Meter.of(Limits.none());

    static LongStream seeds() {
        return Seeds.upTo(80);
    }

    private static Optional<Core> core(long seed) {
        return Cores.findCore(
                GridSketch.rich(seed, 5 + (int) (seed % 8), 3 + (int) (seed % 5), 1 + (int) (seed / 5 % 4)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverBoundMoreThanTheLeastTreeNorCutOffItsEdges(long seed) {
        core(seed)
                .ifPresent(core -> plainly(core).ifPresent(tree -> {
                    check(tree, Moats.of(core, ENDLESS));
                    check(tree, Moats.of(core, ENDLESS).deeper(tree, core.leaves(), ENDLESS, moats -> {}));
                }));
    }

    private static void check(CoreTree tree, Moats moats) {
        Core core = moats.core();
        long weight = tree.cost().weight();
        assertThat(moats.lowerBound()).isBetween(1L, weight);
        long[] detours = moats.detours();
        for (int i = 0; i < tree.size(); i++) {
            assertThat(moats.lowerBound() + detours[tree.edge(i)]).isLessThanOrEqualTo(weight);
        }
        checkStates(core, tree, moats.bound(weight));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverLeaveOutWhatALeastTreeUses(long seed) {
        core(seed)
                .ifPresent(core -> plainly(core).ifPresent(tree -> {
                    Moats moats = Moats.of(core, ENDLESS);
                    long weight = tree.cost().weight();
                    SubCore part = new Narrowing(core).by(moats).part(weight, core.root());
                    CoreTree inPart = plainly(part.core()).orElseThrow();
                    assertThat(part.findInWhole(inPart).map(CoreTree::cost)).contains(tree.cost());
                    checkStates(part.core(), inPart, moats.bound(part.core(), weight));
                }));
    }

    private static Optional<CoreTree> plainly(Core core) {
        return new LeastTreeSearch(core, Shortcuts.NONE, ENDLESS, Optional.empty()).findTree();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void areCutsThatNoEdgePaysTwice(long seed) {
        core(seed).ifPresent(core -> {
            BitSet guide = someEdges(core, seed);
            for (int root = 0; root < core.leaves(); root++) {
                certify(core.rootedAt(root), guide, ENDLESS);
                certify(core.rootedAt(root), new BitSet(), ENDLESS);
            }
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("few")
    void areSuchCutsEvenWhenTimeIsOver(long seed) {
        Cores.findCore(GridSketch.rich(seed, 250, 6, 2)).ifPresent(core -> {
            Meter over = Meter.of(Limits.none().within(Duration.ofSeconds(-1)));
            certify(core, new BitSet(), over);
        });
    }

    static LongStream few() {
        return Seeds.upTo(6);
    }

    private static BitSet someEdges(Core core, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BitSet edges = new BitSet();
        random.ints(core.edges() / 4, 0, core.edges()).forEach(edges::set);
        return edges;
    }

    private static void certify(Core core, BitSet guide, Meter meter) {
        for (int grade = 0; grade < core.need().grades(); grade++) {
            Ascent ascent = new Ascent(core, grade, guide, meter);
            assertThat(DualCertificate.check(core, grade, ascent.moats())).isEqualTo(ascent.width());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void boundIsTheSumOfAllCutsAndTheLeastLandingOfTheRoot(long seed) {
        core(seed).ifPresent(core -> {
            long sum = core.leaf(core.root()).leastWeight();
            for (int grade = 0; grade < core.need().grades(); grade++) {
                sum += DualCertificate.check(core, grade, new Ascent(core, grade, new BitSet(), ENDLESS).moats());
            }
            assertThat(Moats.of(core, ENDLESS).lowerBound()).isEqualTo(sum);
        });
    }

    /** What hangs at a node of the least tree, or at the far end of the stretch that leaves it, is a state of it. */
    private static void checkStates(Core core, CoreTree tree, Bound bound) {
        Hanging hanging = new Hanging(core, tree);
        long whole = hanging.walk(tree.landing(core.root()), -1, (side, node, weight) -> {
            bound.begin(side);
            assertThat(bound.isBeyond(weight, node)).isFalse();
        });
        Cost ofRoot = core.leaf(core.root()).costAt(tree.landing(core.root()));
        assertThat(whole + ofRoot.weight()).isEqualTo(tree.cost().weight());
    }

    private interface State {
        void check(long side, int node, long weight);
    }

    /** Goes up a tree from the root and adds up what hangs at each node. */
    private static final class Hanging {
        private final Core core;
        private final CoreTree tree;
        private long side;

        Hanging(Core core, CoreTree tree) {
            this.core = core;
            this.tree = tree;
        }

        /** Weight of what hangs at a node that was come to by an edge of the tree; its leaves are left in the side. */
        private long walk(int node, int cameBy, State state) {
            long here = 0;
            int parts = 0;
            long weight = 0;
            for (int leaf = 0; leaf < core.leaves(); leaf++) {
                if (leaf != core.root() && tree.landing(leaf) == node) {
                    here |= 1L << leaf;
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
