package org.bondspan.solve;

import java.util.BitSet;
import java.util.function.ToIntFunction;

/** Any function of a side of any number of terminals. */
final class WideSideNeed implements CutNeed {

    private final PairNeed atLeast;
    private final ToIntFunction<BitSet> rankOfSide;

    WideSideNeed(PairNeed atLeast, ToIntFunction<BitSet> rankOfSide) {
        this.atLeast = atLeast;
        this.rankOfSide = rankOfSide;
    }

    int terminals() {
        return atLeast.terminals();
    }

    @Override
    public int rank(long side) {
        return rank(BitSet.valueOf(new long[] {side}));
    }

    @Override
    public int rank(BitSet side) {
        return rankOfSide.applyAsInt(side);
    }

    @Override
    public int floor(int terminal, int other) {
        return atLeast.ofPair(terminal, other);
    }
}
