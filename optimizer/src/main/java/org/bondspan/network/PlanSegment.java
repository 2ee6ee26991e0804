package org.bondspan.network;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.site.PlanPoint;

/** A straight stretch in plan; a single place where it goes straight up. */
record PlanSegment(PlanPoint from, PlanPoint to) {
    /** Within so much, in x and in y, two places are one. */
    static final long SAME_PLACE = LineLengths.SAME_PLACE.nanometres();

    boolean isPlace() {
        return from.equals(to);
    }

    boolean isAlongX() {
        return from.y() == to.y() && from.x() != to.x();
    }

    boolean isOblique() {
        return from.x() != to.x() && from.y() != to.y();
    }

    long lowX() {
        return Math.min(from.x(), to.x());
    }

    long highX() {
        return Math.max(from.x(), to.x());
    }

    long lowY() {
        return Math.min(from.y(), to.y());
    }

    long highY() {
        return Math.max(from.y(), to.y());
    }

    /**
     * Whether a place lies on it: exactly where it runs along an axis, else within {@link #SAME_PLACE}, since few plan
     * coordinates can lie on an oblique line exactly.
     */
    boolean contains(PlanPoint at) {
        if (at.equals(from) || at.equals(to)) {
            return true;
        }
        if (!isOblique()) {
            return lowX() <= at.x() && at.x() <= highX() && lowY() <= at.y() && at.y() <= highY();
        }
        double share = share(at);
        if (share <= 0 || share >= 1) {
            return false;
        }
        double offX = from.x() - at.x() + share * (to.x() - from.x());
        double offY = from.y() - at.y() + share * (to.y() - from.y());
        return Math.abs(offX) <= SAME_PLACE && Math.abs(offY) <= SAME_PLACE;
    }

    /** How far along the segment the nearest point of its line lies, 0 at {@code from}, 1 at {@code to}. */
    double share(PlanPoint at) {
        double dx = (double) to.x() - from.x();
        double dy = (double) to.y() - from.y();
        double px = (double) at.x() - from.x();
        double py = (double) at.y() - from.y();
        return isPlace() ? 0 : (px * dx + py * dy) / (dx * dx + dy * dy);
    }

    /** Where the two cross in a single place, rounded to the base unit; empty where they are parallel or apart. */
    Optional<PlanPoint> findCrossing(PlanSegment other) {
        double dx = (double) to.x() - from.x();
        double dy = (double) to.y() - from.y();
        double ox = (double) other.to.x() - other.from.x();
        double oy = (double) other.to.y() - other.from.y();
        double cross = dx * oy - dy * ox;
        if (cross == 0) {
            return Optional.empty();
        }
        double px = (double) other.from.x() - from.x();
        double py = (double) other.from.y() - from.y();
        double mine = (px * oy - py * ox) / cross;
        double others = (px * dy - py * dx) / cross;
        if (mine < 0 || mine > 1 || others < 0 || others > 1) {
            return Optional.empty();
        }
        return Optional.of(new PlanPoint(crossingX(other, mine), crossingY(other, mine)));
    }

    private long crossingX(PlanSegment other, double mine) {
        if (from.x() == to.x()) {
            return from.x();
        }
        return other.from.x() == other.to.x() ? other.from.x() : from.x() + Math.round(mine * (to.x() - from.x()));
    }

    private long crossingY(PlanSegment other, double mine) {
        if (from.y() == to.y()) {
            return from.y();
        }
        return other.from.y() == other.to.y() ? other.from.y() : from.y() + Math.round(mine * (to.y() - from.y()));
    }
}
