package org.bondspan.solve;

import java.util.BitSet;
import java.util.function.LongToIntFunction;
import java.util.function.ToIntFunction;

/**
 * Rank needed by a stretch that parts the terminals into two sides. A side is a bit set: bit t stands for terminal t.
 * Immutable as far as the function given to {@link #of} is.
 */
public sealed interface CutNeed permits PairNeed, SideNeed, WideSideNeed {

    /**
     * The need of a cut is the largest need of a pair that it separates. Any number of terminals.
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
     * empty nor everything. For up to 63 terminals.
     */
    static CutNeed of(LongToIntFunction rankOfSide) {
        return new SideNeed(rankOfSide);
    }

    /**
     * The same for any number of terminals.
     *
     * @param atLeast symmetric square table: no cut that separates the pair needs less. Zeros are always right; larger
     *     numbers make better bounds where there are many terminals
     * @param rankOfSide must not change the set that it is given
     */
    static CutNeed of(int[][] atLeast, ToIntFunction<BitSet> rankOfSide) {
        return new WideSideNeed(new PairNeed(atLeast), rankOfSide);
    }

    /** Rank needed between this side, which is neither empty nor everything, and the rest; terminals 0 to 62 alone. */
    int rank(long side);

    /** Rank needed between this side, which is neither empty nor everything, and the rest. */
    int rank(BitSet side);

    /** Rank needed by the cut around one terminal, where there are others. */
    default int rankAround(int terminal) {
        BitSet side = new BitSet();
        side.set(terminal);
        return rank(side);
    }

    /** A rank that every cut between two terminals needs at least. */
    int floor(int terminal, int other);
}
