package org.bondspan.review;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.code.SamePlace;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.Length;

/** One straight piece of drawn metal: a run of a line, a column, a beam. */
record Stroke(LineVertex from, LineVertex to) {
    private static final long SAME = LineLengths.SAME_PLACE.nanometres();

    /** Heights from {@code low} to {@code high}. */
    record Heights(Length low, Length high) {
        /** The lowest height at which both have something, to within 0.05 ft. */
        Optional<Length> findCommon(Heights other) {
            Length lowest = low.compareTo(other.low) > 0 ? low : other.low;
            Length highest = high.compareTo(other.high) < 0 ? high : other.high;
            return lowest.nanometres() - highest.nanometres() <= SAME ? Optional.of(lowest) : Optional.empty();
        }
    }

    boolean isVertical() {
        return SamePlace.isSame(from.at(), to.at());
    }

    /** At which heights it stands or passes over a place; empty where it does not. */
    Optional<Heights> findHeights(PlanPoint at) {
        if (isVertical()) {
            boolean upward = from.height().compareTo(to.height()) <= 0;
            return SamePlace.isSame(from.at(), at)
                    ? Optional.of(
                            new Heights(upward ? from.height() : to.height(), upward ? to.height() : from.height()))
                    : Optional.empty();
        }
        double along = along(at);
        PlanPoint nearest = new PlanPoint(
                between(from.at().x(), to.at().x(), along),
                between(from.at().y(), to.at().y(), along));
        if (!SamePlace.isSame(nearest, at)) {
            return Optional.empty();
        }
        Length height = Length.ofNanometres(
                between(from.height().nanometres(), to.height().nanometres(), along));
        return Optional.of(new Heights(height, height));
    }

    /** Where in plan two strokes cross; empty where they are parallel or vertical. */
    Optional<PlanPoint> findCrossing(Stroke other) {
        double ax = (double) (to.at().x() - from.at().x());
        double ay = (double) (to.at().y() - from.at().y());
        double bx = (double) (other.to.at().x() - other.from.at().x());
        double by = (double) (other.to.at().y() - other.from.at().y());
        double cross = ax * by - ay * bx;
        if (cross == 0) {
            return Optional.empty();
        }
        double dx = (double) (other.from.at().x() - from.at().x());
        double dy = (double) (other.from.at().y() - from.at().y());
        double along = (dx * by - dy * bx) / cross;
        if (along < 0 || along > 1) {
            return Optional.empty();
        }
        return Optional.of(new PlanPoint(
                between(from.at().x(), to.at().x(), along),
                between(from.at().y(), to.at().y(), along)));
    }

    /** Share of the run, 0 to 1, whose place lies nearest in plan. */
    private double along(PlanPoint at) {
        double dx = (double) (to.at().x() - from.at().x());
        double dy = (double) (to.at().y() - from.at().y());
        double dot = dx * (double) (at.x() - from.at().x())
                + dy * (double) (at.y() - from.at().y());
        return Math.max(0, Math.min(1, dot / (dx * dx + dy * dy)));
    }

    private static long between(long a, long b, double share) {
        return a + Math.round((double) (b - a) * share);
    }
}
