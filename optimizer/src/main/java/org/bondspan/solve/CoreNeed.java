package org.bondspan.solve;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Needs of cuts between leaves. A side is a bit set of leaves. Ranks are numbered anew as grades: 0 is the least rank
 * that any cut needs, and a larger need is a larger grade.
 */
abstract sealed class CoreNeed permits CorePairNeed, CoreSideNeed {

    private final int[] ranks;

    /** All ranks that a cut may need, ascending. */
    CoreNeed(int[] ranks) {
        this.ranks = ranks;
    }

    static CoreNeed of(RoutingProblem problem, List<Leaf> leaves) {
        return problem.need() instanceof PairNeed pairs
                ? CorePairNeed.of(pairs, leaves)
                : CoreSideNeed.of(problem, leaves);
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

    /** Grade needed between a side, neither empty nor everything, and the rest. */
    abstract int grade(int side);

    /**
     * Leaves to which, in any tree, one can go from where the side hangs without coming to a stretch that would need
     * more if the side hung behind it. See {@link Separator}.
     */
    abstract int within(int side);

    /** A grade that every stretch between the whole side, hanging together, and a leaf outside needs at least. */
    abstract int floor(int side, int leaf);

    /** The grade of which every stretch that {@link #within} goes along is at least. */
    abstract int withinGrade(int side);
}
