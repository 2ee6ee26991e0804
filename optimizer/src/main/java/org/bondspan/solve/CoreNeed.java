package org.bondspan.solve;

import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Needs of cuts between leaves. A side is a set of leaves, as a bit set, or as a number where there are at most
 * {@link #MOST_IN_A_LONG} leaves. Ranks are numbered anew as grades: 0 is the least rank that any cut needs (or less),
 * and a larger need is a larger grade.
 */
abstract sealed class CoreNeed permits CorePairNeed, CoreSideNeed, CoreWideNeed {

    /** Most leaves of which sides are numbers. */
    static final int MOST_IN_A_LONG = 62;

    private final int[] ranks;

    /** All ranks that a cut may need, ascending. */
    CoreNeed(int[] ranks) {
        this.ranks = ranks;
    }

    static CoreNeed of(RoutingProblem problem, List<Leaf> leaves) {
        if (problem.need() instanceof PairNeed pairs) {
            return CorePairNeed.of(pairs, leaves);
        }
        return leaves.size() <= CoreSideNeed.MOST_LEAVES
                ? CoreSideNeed.of(problem, leaves)
                : CoreWideNeed.of(problem, leaves);
    }

    /** Distinct ranks, ascending. */
    static int[] distinct(IntStream ranks) {
        return ranks.sorted().distinct().toArray();
    }

    final int grades() {
        return ranks.length;
    }

    final int rank(int grade) {
        return ranks[grade];
    }

    final int[] ranks() {
        return ranks;
    }

    /** Whether sides can be numbers, as the search over all sets of leaves wants them. */
    abstract boolean isNarrow();

    /** Grade needed between a side, neither empty nor everything, and the rest. */
    abstract int grade(long side);

    /** Grade needed between a side, neither empty nor everything, and the rest. */
    abstract int grade(BitSet side);

    /**
     * Leaves to which, in any tree, one can go from where the side hangs without coming to a stretch that would need
     * more if the side hung behind it. See {@link Separator}.
     */
    abstract long within(long side);

    /** A grade that every stretch between the whole side, hanging together, and a leaf outside needs at least. */
    abstract int floor(long side, int leaf);

    /** A grade that every stretch between two leaves needs at least. */
    abstract int floorOfPair(int leaf, int other);

    /** The grade of which every stretch that {@link #within} goes along is at least. */
    abstract int withinGrade(long side);

    /**
     * Needs between groups of leaves, each seen as one leaf, at the same grades.
     *
     * @param groups a partition of all leaves
     */
    abstract CoreNeed grouped(List<BitSet> groups);
}
