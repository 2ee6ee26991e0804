package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Needs given by any function of a side, kept in a table by sides. */
final class CoreSideNeed extends CoreNeed {

    /** Beyond this many leaves the work for {@link #within} would outgrow the search itself. */
    private static final int MOST_LEAVES_FOR_WITHIN = 16;

    private final int leaves;
    private final byte[] grade;
    private final byte[][] floor;

    private CoreSideNeed(int[] ranks, int leaves, byte[] grade) {
        super(ranks);
        this.leaves = leaves;
        this.grade = grade;
        floor = new byte[leaves][];
    }

    static CoreSideNeed of(RoutingProblem problem, List<Leaf> leaves) {
        int everything = (1 << leaves.size()) - 1;
        long[] members = new long[everything + 1];
        int[] rank = new int[everything + 1];
        for (int side = 1; side < everything; side++) {
            members[side] = members[side & (side - 1)]
                    | leaves.get(Integer.numberOfTrailingZeros(side)).members();
            rank[side] = checkedRank(problem, members[side]);
        }
        int[] ranks = distinct(IntStream.range(1, everything).map(side -> rank[side]));
        byte[] grade = new byte[everything + 1];
        for (int side = 1; side < everything; side++) {
            grade[side] = (byte) Arrays.binarySearch(ranks, rank[side]);
        }
        return new CoreSideNeed(ranks, leaves.size(), grade);
    }

    private static int checkedRank(RoutingProblem problem, long side) {
        int rank = problem.need().rank(side);
        if (rank < 0 || rank >= problem.ranks()) {
            throw new IllegalArgumentException(
                    "need " + rank + " of side " + Long.toBinaryString(side) + " is no rank below " + problem.ranks());
        }
        return rank;
    }

    @Override
    int grade(int side) {
        return grade[side];
    }

    /**
     * A leaf is left out when some part Z of the other leaves, with the leaf in it, needs more together with the side
     * than alone: then a stretch with Z behind it could not take the side behind it too.
     */
    @Override
    int within(int side) {
        if (leaves > MOST_LEAVES_FOR_WITHIN) {
            return 0;
        }
        int others = (grade.length - 1) & ~side;
        int beyond = 0;
        for (int part = others & (others - 1); part != 0; part = (part - 1) & others) {
            if (grade[side | part] > grade[part]) {
                beyond |= part;
            }
        }
        return others & ~beyond;
    }

    @Override
    int withinGrade(int side) {
        return 0;
    }

    @Override
    int floor(int side, int leaf) {
        if (floor[leaf] == null) {
            floor[leaf] = floors(leaf);
        }
        return floor[leaf][side];
    }

    /** For every side without the leaf: the least grade of a side that contains it and not the leaf. */
    private byte[] floors(int leaf) {
        byte[] least = grade.clone();
        for (int bit = 0; bit < leaves; bit++) {
            for (int side = 1; side < least.length && bit != leaf; side++) {
                int larger = side | (1 << bit);
                if ((side >>> leaf & 1) == 0 && larger != side) {
                    least[side] = (byte) Math.min(least[side], least[larger]);
                }
            }
        }
        return least;
    }
}
