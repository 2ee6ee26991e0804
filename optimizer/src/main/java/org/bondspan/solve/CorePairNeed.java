package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Needs given by pairs. */
final class CorePairNeed extends CoreNeed {

    private final int[][] pair;
    /** By grade and leaf: the leaves with which it needs this grade or more. */
    private final int[][] partners;

    private CorePairNeed(int[] ranks, int[][] pair) {
        super(ranks);
        this.pair = pair;
        partners = new int[ranks.length][pair.length];
        for (int i = 0; i < pair.length; i++) {
            for (int j = 0; j < pair.length; j++) {
                for (int grade = 0; i != j && grade <= pair[i][j]; grade++) {
                    partners[grade][i] |= 1 << j;
                }
            }
        }
    }

    static CorePairNeed of(PairNeed pairs, List<Leaf> leaves) {
        int k = leaves.size();
        int[][] pair = new int[k][k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                pair[i][j] = i == j
                        ? -1
                        : most(pairs, leaves.get(i).members(), leaves.get(j).members());
            }
        }
        int[] ranks = distinct(Arrays.stream(pair).flatMapToInt(IntStream::of).filter(rank -> rank >= 0));
        for (int[] row : pair) {
            toGrades(row, ranks);
        }
        return new CorePairNeed(ranks, pair);
    }

    private static int most(PairNeed pairs, long side, long otherSide) {
        int most = 0;
        for (int s = 0; s < pairs.terminals(); s++) {
            for (int t = 0; t < pairs.terminals(); t++) {
                if ((side >>> s & 1) == 1 && (otherSide >>> t & 1) == 1) {
                    most = Math.max(most, pairs.ofPair(s, t));
                }
            }
        }
        return most;
    }

    private static void toGrades(int[] row, int[] ranks) {
        for (int j = 0; j < row.length; j++) {
            row[j] = row[j] < 0 ? -1 : Arrays.binarySearch(ranks, row[j]);
        }
    }

    @Override
    int grade(int side) {
        for (int grade = grades() - 1; grade > 0; grade--) {
            if (reach(side, grade) != side) {
                return grade;
            }
        }
        return 0;
    }

    /** The side and everything that a leaf of it needs this grade or more with. */
    private int reach(int side, int grade) {
        int reach = side;
        for (int left = side; left != 0; left &= left - 1) {
            reach |= partners[grade][Integer.numberOfTrailingZeros(left)];
        }
        return reach;
    }

    /**
     * With rho the grade of the side: the leaves linked to the side by pairs that need rho or more. In a tree such a
     * pair is linked by stretches of rho or more alone, so all of them, and the place where the side hangs, lie in one
     * piece of stretches of rho or more; and the side, hung elsewhere in this piece, asks no stretch of it for more
     * than rho.
     */
    @Override
    int within(int side) {
        int grade = grade(side);
        int reach = side;
        int before;
        do {
            before = reach;
            reach = reach(reach, grade);
        } while (reach != before);
        return reach & ~side;
    }

    @Override
    int withinGrade(int side) {
        return grade(side);
    }

    @Override
    int floor(int side, int leaf) {
        int most = 0;
        for (int left = side; left != 0; left &= left - 1) {
            most = Math.max(most, pair[Integer.numberOfTrailingZeros(left)][leaf]);
        }
        return most;
    }
}
