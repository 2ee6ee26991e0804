package org.bondspan.solve;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * Stretches with what they cost at each grade: edges of a graph, two stretches end to end, or the better of two side by
 * side (not always the same one at every grade). Every stretch can be taken apart into edges again.
 */
final class StretchPool {

    private static final byte EDGE = 0;
    private static final byte SERIES = 1;
    private static final byte PARALLEL = 2;
    private static final long FORBIDDEN = RoutingProblem.FORBIDDEN;

    private int size;
    private byte[] kind;
    private int[] first;
    private int[] second;
    private final long[][] weight;
    private final long[][] extent;

    StretchPool(int grades, int capacity) {
        int room = Math.max(16, capacity);
        kind = new byte[room];
        first = new int[room];
        second = new int[room];
        weight = new long[grades][room];
        extent = new long[grades][room];
    }

    /** Weight at a grade, below 0 when the stretch cannot meet it. */
    long weight(int stretch, int grade) {
        return weight[grade][stretch];
    }

    /** Length and taps at a grade, as in {@link Cost}. */
    long extent(int stretch, int grade) {
        return extent[grade][stretch];
    }

    /** Whether two stretches cost the same at every grade. */
    boolean costSame(int one, int other) {
        for (int grade = 0; grade < weight.length; grade++) {
            if (weight[grade][one] != weight[grade][other] || extent[grade][one] != extent[grade][other]) {
                return false;
            }
        }
        return true;
    }

    /** The same number for stretches that cost the same. */
    int hash(int stretch) {
        long hash = 0;
        for (int grade = 0; grade < weight.length; grade++) {
            hash = 31 * (31 * hash + weight[grade][stretch]) + extent[grade][stretch];
        }
        // Multiplying by the golden ratio's bits spreads what is a multiple of some length (Knuth, from memory).
        return (int) ((hash * 0x9E3779B97F4A7C15L) >>> Integer.SIZE);
    }

    /** An edge of the problem. */
    int addEdge(RoutingProblem problem, CoreNeed need, int edge) {
        int stretch = add(EDGE, edge, -1);
        Tariffs tariffs = problem.tariffs();
        long length = problem.edges().length(edge);
        int tariff = problem.edges().tariff(edge);
        for (int grade = 0; grade < weight.length; grade++) {
            int rank = need.rank(grade);
            if (tariffs.bought(tariff, rank) < 0) {
                weight[grade][stretch] = FORBIDDEN;
            } else {
                long perUnit = tariffs.perUnit(tariff, rank);
                weight[grade][stretch] = perUnit * length;
                extent[grade][stretch] = perUnit == 0 ? 0 : length * Cost.TAPS;
            }
        }
        return stretch;
    }

    /** An edge of a core. */
    int addEdge(Core core, int edge) {
        return addEdge(core, edge, edge);
    }

    /** An edge of a core that is to be told by another number. */
    int addEdge(Core core, int edge, int number) {
        int stretch = add(EDGE, number, -1);
        for (int grade = 0; grade < weight.length; grade++) {
            weight[grade][stretch] = core.edgeWeight(edge, grade);
            extent[grade][stretch] = core.edgeExtent(edge, grade);
        }
        return stretch;
    }

    /** Whether a stretch can meet any grade at all. */
    boolean isUsable(int stretch) {
        return weight[0][stretch] >= 0;
    }

    /**
     * Two stretches end to end.
     *
     * @throws ArithmeticException when both together are too large for the search
     */
    int series(int one, int other) {
        int stretch = add(SERIES, one, other);
        for (int grade = 0; grade < weight.length; grade++) {
            long[] w = weight[grade];
            boolean both = w[one] >= 0 && w[other] >= 0;
            w[stretch] = both ? sum(w[one], w[other]) : FORBIDDEN;
            extent[grade][stretch] = both ? sum(extent[grade][one], extent[grade][other]) : 0;
        }
        return stretch;
    }

    private static long sum(long one, long other) {
        if (one + other > SizeCheck.MOST_OF_A_STRETCH) {
            throw new ArithmeticException("a chain of stretches is too long to be added in 64 bits; use coarser units");
        }
        return one + other;
    }

    /** The better of two stretches at each grade; a tree never takes both. */
    int parallel(int one, int other) {
        boolean oneIsBest = true;
        boolean otherIsBest = true;
        for (int grade = 0; grade < weight.length; grade++) {
            int order = compare(one, other, grade);
            oneIsBest &= order <= 0;
            otherIsBest &= order >= 0;
        }
        if (oneIsBest || otherIsBest) {
            return oneIsBest ? one : other;
        }
        int stretch = add(PARALLEL, one, other);
        for (int grade = 0; grade < weight.length; grade++) {
            int better = compare(one, other, grade) <= 0 ? one : other;
            weight[grade][stretch] = weight[grade][better];
            extent[grade][stretch] = extent[grade][better];
        }
        return stretch;
    }

    private int compare(int one, int other, int grade) {
        // Seen as unsigned, FORBIDDEN is the largest of all.
        int byWeight = Long.compareUnsigned(weight[grade][one], weight[grade][other]);
        return byWeight != 0 ? byWeight : Long.compare(extent[grade][one], extent[grade][other]);
    }

    /** Tells the edges that make up a stretch at a grade. */
    void forEachEdge(int stretch, int grade, IntConsumer action) {
        int[] open = new int[16];
        int count = 0;
        open[count++] = stretch;
        while (count > 0) {
            int at = open[--count];
            if (kind[at] == EDGE) {
                action.accept(first[at]);
                continue;
            }
            if (count + 2 > open.length) {
                open = Arrays.copyOf(open, 2 * open.length);
            }
            if (kind[at] == SERIES) {
                open[count++] = first[at];
                open[count++] = second[at];
            } else {
                open[count++] = compare(first[at], second[at], grade) <= 0 ? first[at] : second[at];
            }
        }
    }

    private int add(byte newKind, int one, int other) {
        if (size == kind.length) {
            int room = 2 * size;
            kind = Arrays.copyOf(kind, room);
            first = Arrays.copyOf(first, room);
            second = Arrays.copyOf(second, room);
            for (int grade = 0; grade < weight.length; grade++) {
                weight[grade] = Arrays.copyOf(weight[grade], room);
                extent[grade] = Arrays.copyOf(extent[grade], room);
            }
        }
        kind[size] = newKind;
        first[size] = one;
        second[size] = other;
        return size++;
    }
}
