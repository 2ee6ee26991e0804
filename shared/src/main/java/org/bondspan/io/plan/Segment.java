package org.bondspan.io.plan;

import java.util.Comparator;
import org.bondspan.site.PlanPoint;

/** A straight piece between two places in plan, possibly of no length. Exact for magnitudes up to 1e18 nm. */
public record Segment(PlanPoint from, PlanPoint to) {
    /** West to east, then south to north: the order in which a sweep line meets places. */
    static final Comparator<PlanPoint> SWEEP =
            Comparator.comparingLong(PlanPoint::x).thenComparingLong(PlanPoint::y);

    /** The end that a sweep meets first. */
    PlanPoint first() {
        return SWEEP.compare(from, to) <= 0 ? from : to;
    }

    PlanPoint last() {
        return SWEEP.compare(from, to) <= 0 ? to : from;
    }

    /** Whether the two have a place in common, ends included. */
    public boolean meets(Segment other) {
        if (!boxesMeet(other)) {
            return false;
        }
        return turn(from, to, other.from) * turn(from, to, other.to) <= 0
                && turn(other.from, other.to, from) * turn(other.from, other.to, to) <= 0;
    }

    private boolean boxesMeet(Segment other) {
        return Math.max(from.x(), to.x()) >= Math.min(other.from.x(), other.to.x())
                && Math.max(other.from.x(), other.to.x()) >= Math.min(from.x(), to.x())
                && Math.max(from.y(), to.y()) >= Math.min(other.from.y(), other.to.y())
                && Math.max(other.from.y(), other.to.y()) >= Math.min(from.y(), to.y());
    }

    /** 1 when the way a, b, c turns left, -1 when right, 0 when the three lie on one line. */
    static int turn(PlanPoint a, PlanPoint b, PlanPoint c) {
        return compareProducts(b.x() - a.x(), c.y() - a.y(), b.y() - a.y(), c.x() - a.x());
    }

    /** Compares p q with r s in 128 bits. */
    private static int compareProducts(long p, long q, long r, long s) {
        int high = Long.compare(Math.multiplyHigh(p, q), Math.multiplyHigh(r, s));
        return high != 0 ? high : Long.compareUnsigned(p * q, r * s);
    }
}
