package org.bondspan.solve;

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
}
