package org.bondspan.solve;

import java.util.BitSet;

/** Largest need of any separated pair. */
final class PairNeed implements CutNeed {

    private final int[][] rank;
    /** By rank and terminal: the terminals with which it needs this rank or more. */
    private final BitSet[][] partners;
    /** By rank: the terminals that need this rank or more with any other. */
    private final BitSet[] active;

    PairNeed(int[][] rank) {
        this.rank = new int[rank.length][];
        for (int i = 0; i < rank.length; i++) {
            if (rank[i].length != rank.length) {
                throw new IllegalArgumentException(
                        "row " + i + " has " + rank[i].length + " entries, not " + rank.length);
            }
            this.rank[i] = rank[i].clone();
        }
        int most = 0;
        for (int i = 0; i < rank.length; i++) {
            for (int j = 0; j < i; j++) {
                if (rank[i][j] < 0 || rank[i][j] != rank[j][i]) {
                    throw new IllegalArgumentException(
                            "need of pair " + i + ", " + j + " is " + rank[i][j] + " and " + rank[j][i]);
                }
                most = Math.max(most, rank[i][j]);
            }
        }
        partners = new BitSet[most + 1][rank.length];
        active = new BitSet[most + 1];
        for (int at = 1; at <= most; at++) {
            active[at] = new BitSet();
            for (int i = 0; i < rank.length; i++) {
                partners[at][i] = partners(i, at);
                active[at].set(i, !partners[at][i].isEmpty());
            }
        }
    }

    private BitSet partners(int terminal, int atLeast) {
        BitSet found = new BitSet();
        for (int j = 0; j < rank.length; j++) {
            found.set(j, j != terminal && rank[terminal][j] >= atLeast);
        }
        return found;
    }

    int terminals() {
        return rank.length;
    }

    int ofPair(int s, int t) {
        return rank[s][t];
    }

    @Override
    public int floor(int terminal, int other) {
        return rank[terminal][other];
    }

    @Override
    public int rank(long side) {
        return rank(BitSet.valueOf(new long[] {side}));
    }

    @Override
    public int rank(BitSet side) {
        for (int at = partners.length - 1; at > 0; at--) {
            for (int s = active[at].nextSetBit(0); s >= 0; s = active[at].nextSetBit(s + 1)) {
                if (side.get(s) && isBeyond(partners[at][s], side)) {
                    return at;
                }
            }
        }
        return 0;
    }

    private static boolean isBeyond(BitSet some, BitSet side) {
        for (int t = some.nextSetBit(0); t >= 0; t = some.nextSetBit(t + 1)) {
            if (!side.get(t)) {
                return true;
            }
        }
        return false;
    }
}
