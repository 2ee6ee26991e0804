package org.bondspan.solve;

import java.util.BitSet;
import java.util.function.LongToIntFunction;

/** Any function of a side. */
final class SideNeed implements CutNeed {

    private final LongToIntFunction rankOfSide;

    SideNeed(LongToIntFunction rankOfSide) {
        this.rankOfSide = rankOfSide;
    }

    @Override
    public int rank(long side) {
        return rankOfSide.applyAsInt(side);
    }

    @Override
    public int rank(BitSet side) {
        if (side.length() > RoutingProblem.MOST_IN_A_LONG) {
            throw new IllegalArgumentException("more than " + RoutingProblem.MOST_IN_A_LONG + " terminals");
        }
        return side.isEmpty() ? rank(0) : rank(side.toLongArray()[0]);
    }

    @Override
    public int floor(int terminal, int other) {
        return 0;
    }
}
