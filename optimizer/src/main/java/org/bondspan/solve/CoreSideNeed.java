package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Needs given by any function of a side, kept in a table by sides. */
final class CoreSideNeed extends CoreNeed {

    /** Beyond this many leaves the work for {@link #within} would outgrow the search itself. */
    private static final int MOST_LEAVES_FOR_WITHIN = 18;

    /** Beyond this many leaves the table would be too large. */
    static final int MOST_LEAVES = 20;

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
        List<BitSet> members = leaves.stream().map(Leaf::members).toList();
        int[] rank = new int[everything + 1];
        for (int side = 1; side < everything; side++) {
            rank[side] = checkedRank(problem, union(members, side));
        }
        int[] ranks = distinct(IntStream.range(1, everything).map(side -> rank[side]));
        byte[] grade = new byte[everything + 1];
        for (int side = 1; side < everything; side++) {
            grade[side] = (byte) Arrays.binarySearch(ranks, rank[side]);
        }
        return new CoreSideNeed(ranks, leaves.size(), grade);
    }

    private static BitSet union(List<BitSet> groups, int side) {
        BitSet union = new BitSet();
        for (int left = side; left != 0; left &= left - 1) {
            union.or(groups.get(Integer.numberOfTrailingZeros(left)));
        }
        return union;
    }

    /** As {@link CoreNeed#grouped} has it, for any needs. */
    static CoreSideNeed grouped(CoreNeed whole, List<BitSet> groups) {
        byte[] grade = new byte[1 << groups.size()];
        for (int side = 1; side < grade.length - 1; side++) {
            grade[side] = (byte) whole.grade(union(groups, side));
        }
        return new CoreSideNeed(whole.ranks(), groups.size(), grade);
    }

    static int checkedRank(RoutingProblem problem, BitSet side) {
        int rank = problem.need().rank(side);
        if (rank < 0 || rank >= problem.ranks()) {
            throw new IllegalArgumentException(
                    "need " + rank + " of side " + side + " is no rank below " + problem.ranks());
        }
        return rank;
    }

    @Override
    boolean isNarrow() {
        return true;
    }

    @Override
    int grade(long side) {
        return grade[(int) side];
    }

    @Override
    int grade(BitSet side) {
        return side.isEmpty() ? grade[0] : grade[(int) side.toLongArray()[0]];
    }

    @Override
    int floorOfPair(int leaf, int other) {
        return floor(1L << leaf, other);
    }

    @Override
    CoreNeed grouped(List<BitSet> groups) {
        return grouped(this, groups);
    }

    /**
     * A leaf is left out when some part Z of the other leaves, with the leaf in it, needs more together with the side
     * than alone: then a stretch with Z behind it could not take the side behind it too.
     */
    @Override
    long within(long side) {
        if (leaves > MOST_LEAVES_FOR_WITHIN) {
            return 0;
        }
        int here = (int) side;
        int others = (grade.length - 1) & ~here;
        int beyond = 0;
        for (int part = others & (others - 1); part != 0; part = (part - 1) & others) {
            if (grade[here | part] > grade[part]) {
                beyond |= part;
            }
        }
        return others & ~beyond;
    }

    @Override
    int withinGrade(long side) {
        return 0;
    }

    @Override
    int floor(long side, int leaf) {
        if (floor[leaf] == null) {
            floor[leaf] = floors(leaf);
        }
        return floor[leaf][(int) side];
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
