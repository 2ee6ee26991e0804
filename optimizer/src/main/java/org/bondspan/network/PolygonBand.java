package org.bondspan.network;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where a line parallel to an axis meets a simple polygon, exactly. The line lies at {@code at} on the other axis; just
 * above and just below it the polygon covers two sets of intervals. A stretch between two vertices' coordinates lies in
 * the closed polygon where either set covers it, and inside where both do: only an edge along the line tells the two
 * sets apart, and such an edge ends at vertices.
 */
final class PolygonBand {
    private final long[] along;
    private final long[] across;

    /**
     * @param along coordinates of the vertices along the line's axis
     * @param across their coordinates on the other axis
     */
    PolygonBand(long[] along, long[] across) {
        this.along = along.clone();
        this.across = across.clone();
    }

    /** Smallest coordinate on the other axis. */
    long lowest() {
        return Arrays.stream(across).min().orElseThrow();
    }

    /** Largest coordinate on the other axis. */
    long highest() {
        return Arrays.stream(across).max().orElseThrow();
    }

    /** A closed interval of whole coordinates; empty when {@code to < from}. */
    record Interval(long from, long to) {}

    /** Intervals covered just above and just below, ends rounded inward: what is surely in the closed polygon. */
    List<Interval> closed(long at) {
        List<Interval> intervals = new ArrayList<>(pair(above(at), true));
        intervals.addAll(pair(below(at), true));
        return intervals;
    }

    /** Intervals that lie inside on both sides of the line, ends rounded outward: what an open interior touches. */
    List<Interval> inside(long at) {
        List<Interval> intervals = new ArrayList<>();
        for (Interval up : pair(above(at), false)) {
            for (Interval down : pair(below(at), false)) {
                Interval both = new Interval(Math.max(up.from, down.from), Math.min(up.to, down.to));
                if (both.from < both.to) {
                    intervals.add(both);
                }
            }
        }
        return intervals;
    }

    private List<Crossing> above(long at) {
        return crossings(at, (low, high) -> low <= at && at < high);
    }

    private List<Crossing> below(long at) {
        return crossings(at, (low, high) -> low < at && at <= high);
    }

    private interface Spans {
        boolean test(long low, long high);
    }

    /** Where an edge crosses: between {@code floor} and {@code ceiling}, which are equal when it is a whole number. */
    private record Crossing(long floor, long ceiling) {}

    private List<Crossing> crossings(long at, Spans spans) {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 0; i < along.length; i++) {
            int next = (i + 1) % along.length;
            if (spans.test(Math.min(across[i], across[next]), Math.max(across[i], across[next]))) {
                crossings.add(crossing(i, next, at));
            }
        }
        crossings.sort((a, b) -> {
            int byFloor = Long.compare(a.floor, b.floor);
            return byFloor != 0 ? byFloor : Long.compare(a.ceiling, b.ceiling);
        });
        return crossings;
    }

    private Crossing crossing(int i, int next, long at) {
        if (along[i] == along[next]) {
            return new Crossing(along[i], along[i]);
        }
        BigInteger rise = BigInteger.valueOf(across[next] - across[i]);
        BigInteger shift = BigInteger.valueOf(along[next] - along[i]).multiply(BigInteger.valueOf(at - across[i]));
        BigInteger[] quotient = shift.divideAndRemainder(rise);
        long whole = along[i] + quotient[0].longValueExact();
        int remainder = quotient[1].signum() * rise.signum();
        return new Crossing(remainder < 0 ? whole - 1 : whole, remainder > 0 ? whole + 1 : whole);
    }

    private static List<Interval> pair(List<Crossing> crossings, boolean inward) {
        List<Interval> intervals = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            Crossing from = crossings.get(i);
            Crossing to = crossings.get(i + 1);
            intervals.add(inward ? new Interval(from.ceiling, to.floor) : new Interval(from.floor, to.ceiling));
        }
        return intervals;
    }
}
