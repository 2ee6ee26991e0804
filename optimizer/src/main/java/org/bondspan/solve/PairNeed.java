package org.bondspan.solve;

/** Largest need of any separated pair. */
final class PairNeed implements CutNeed {

    private final int[][] rank;

    PairNeed(int[][] rank) {
        this.rank = new int[rank.length][];
        for (int i = 0; i < rank.length; i++) {
            if (rank[i].length != rank.length) {
                throw new IllegalArgumentException(
                        "row " + i + " has " + rank[i].length + " entries, not " + rank.length);
            }
            this.rank[i] = rank[i].clone();
        }
        for (int i = 0; i < rank.length; i++) {
            for (int j = 0; j < i; j++) {
                if (rank[i][j] < 0 || rank[i][j] != rank[j][i]) {
                    throw new IllegalArgumentException(
                            "need of pair " + i + ", " + j + " is " + rank[i][j] + " and " + rank[j][i]);
                }
            }
        }
    }

    int terminals() {
        return rank.length;
    }

    int ofPair(int s, int t) {
        return rank[s][t];
    }

    @Override
    public int rank(long side) {
        int most = 0;
        for (int s = 0; s < rank.length; s++) {
            if ((side >>> s & 1) == 0) {
                continue;
            }
            for (int t = 0; t < rank.length; t++) {
                if ((side >>> t & 1) == 0) {
                    most = Math.max(most, rank[s][t]);
                }
            }
        }
        return most;
    }
}
