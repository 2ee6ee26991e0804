package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Needs given by pairs. */
final class CorePairNeed extends CoreNeed {

    private final int[][] pair;
    private final PairNeed wide;
    /** By grade and leaf: the leaves with which it needs this grade or more; none where sides are no numbers. */
    private final long[][] partners;

    private CorePairNeed(int[] ranks, int[][] pair) {
        super(ranks);
        this.pair = pair;
        wide = new PairNeed(pair);
        partners = new long[ranks.length][isNarrow() ? pair.length : 0];
        for (int i = 0; i < pair.length && isNarrow(); i++) {
            for (int j = 0; j < pair.length; j++) {
                for (int grade = 0; i != j && grade <= pair[i][j]; grade++) {
                    partners[grade][i] |= 1L << j;
                }
            }
        }
    }

    static CorePairNeed of(PairNeed pairs, List<Leaf> leaves) {
        int[][] pair = most(leaves.stream().map(Leaf::members).toList(), pairs::ofPair);
        int[] ranks = distinct(Arrays.stream(pair).flatMapToInt(IntStream::of).filter(rank -> rank >= 0));
        for (int[] row : pair) {
            toGrades(row, ranks);
        }
        return new CorePairNeed(ranks, pair);
    }

    private interface OfPair {
        int need(int s, int t);
    }

    private static int[][] most(List<BitSet> groups, OfPair pairs) {
        int k = groups.size();
        int[][] most = new int[k][k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                most[i][j] = i == j ? -1 : most(groups.get(i), groups.get(j), pairs);
            }
        }
        return most;
    }

    private static int most(BitSet side, BitSet otherSide, OfPair pairs) {
        int most = 0;
        for (int s = side.nextSetBit(0); s >= 0; s = side.nextSetBit(s + 1)) {
            for (int t = otherSide.nextSetBit(0); t >= 0; t = otherSide.nextSetBit(t + 1)) {
                most = Math.max(most, pairs.need(s, t));
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
    CoreNeed grouped(List<BitSet> groups) {
        return new CorePairNeed(ranks(), grades() == 1 ? allZero(groups.size()) : most(groups, this::floorOfPair));
    }

    private static int[][] allZero(int count) {
        int[][] zero = new int[count][count];
        for (int i = 0; i < count; i++) {
            zero[i][i] = -1;
        }
        return zero;
    }

    @Override
    boolean isNarrow() {
        return pair.length <= MOST_IN_A_LONG;
    }

    @Override
    int grade(BitSet side) {
        return wide.rank(side);
    }

    @Override
    int grade(long side) {
        for (int grade = grades() - 1; grade > 0; grade--) {
            if (reach(side, grade) != side) {
                return grade;
            }
        }
        return 0;
    }

    /** The side and everything that a leaf of it needs this grade or more with. */
    private long reach(long side, int grade) {
        long reach = side;
        for (long left = side; left != 0; left &= left - 1) {
            reach |= partners[grade][Long.numberOfTrailingZeros(left)];
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
    long within(long side) {
        int grade = grade(side);
        long reach = side;
        long before;
        do {
            before = reach;
            reach = reach(reach, grade);
        } while (reach != before);
        return reach & ~side;
    }

    @Override
    int withinGrade(long side) {
        return grade(side);
    }

    @Override
    int floor(long side, int leaf) {
        int most = 0;
        for (long left = side; left != 0; left &= left - 1) {
            most = Math.max(most, pair[Long.numberOfTrailingZeros(left)][leaf]);
        }
        return most;
    }

    @Override
    int floorOfPair(int leaf, int other) {
        return pair[leaf][other];
    }
}
