package org.bondspan.solve;

import java.util.function.LongToIntFunction;

/**
 * Rank needed by a stretch that parts the terminals into two sides. A side is a bit set: bit t stands for terminal t.
 * Immutable as far as the function given to {@link #of} is.
 */
public sealed interface CutNeed permits PairNeed, SideNeed {

    /**
     * The need of a cut is the largest need of a pair that it separates.
     *
     * @param rank symmetric square table, one row per terminal; the diagonal is not looked at
     * @throws IllegalArgumentException when the table is not square, not symmetric or has a negative rank
     */
    static CutNeed ofPairs(int[][] rank) {
        return new PairNeed(rank);
    }

    /**
     * The need of a cut is any function of a side, for example a table of a sum of areas. The function must be
     * symmetric (a side and its complement have the same need), repeatable, and defined for every side that is neither
     * empty nor everything.
     */
    static CutNeed of(LongToIntFunction rankOfSide) {
        return new SideNeed(rankOfSide);
    }

    /** Rank needed between this side, which is neither empty nor everything, and the rest. */
    int rank(long side);
}
