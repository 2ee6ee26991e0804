package org.bondspan.network;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.WireSize;

/**
 * A straight piece of a copper line or installed conductor on a level.
 *
 * @param fromLength along the line up to its start, by measured length where the line has one
 * @param toLength along the line up to its end
 * @param measured whether the line has a measured length: then it joins a floor only at its two ends
 * @param startsLine whether its start is the line's
 * @param endsLine whether its end is the line's
 * @param installed size of an installed conductor; empty for a line along which new copper may run
 */
record LinePiece(
        String path,
        int level,
        PlanSegment plan,
        long fromElevation,
        long toElevation,
        long fromLength,
        long toLength,
        boolean measured,
        boolean startsLine,
        boolean endsLine,
        Optional<WireSize> installed) {
    /** A place on the piece. {@code length} counts along the whole line. */
    record Cut(PlanPoint at, long elevation, long length) implements Comparable<Cut> {
        @Override
        public int compareTo(Cut other) {
            return Long.compare(length, other.length);
        }
    }

    Cut start() {
        return new Cut(plan.from(), fromElevation, fromLength);
    }

    Cut end() {
        return new Cut(plan.to(), toElevation, toLength);
    }

    /** The piece cut at a place between its ends that lies on it; exact along an axis. */
    Cut cutAt(PlanPoint place) {
        if (plan.isOblique()) {
            double share = plan.share(place);
            return new Cut(
                    place,
                    fromElevation + Math.round(share * (toElevation - fromElevation)),
                    fromLength + Math.round(share * (toLength - fromLength)));
        }
        long run = distance(plan.from(), place);
        long whole = distance(plan.from(), plan.to());
        return new Cut(
                place,
                fromElevation + LineLengths.share(toElevation - fromElevation, run, whole),
                fromLength + LineLengths.share(toLength - fromLength, run, whole));
    }

    private static long distance(PlanPoint a, PlanPoint b) {
        return Math.abs(b.x() - a.x()) + Math.abs(b.y() - a.y());
    }

    /** An open floor joins it at every place. */
    boolean joinsFloorAllAlong() {
        return !measured && !plan.isOblique();
    }

    /** Whether a floor, where it is open at that place, joins the line there. */
    boolean joinsFloorAt(PlanPoint place) {
        if (measured) {
            return (startsLine && place.equals(plan.from())) || (endsLine && place.equals(plan.to()));
        }
        return !plan.isOblique() || place.equals(plan.from()) || place.equals(plan.to());
    }

    /** Whether the line has a vertex at that place. */
    boolean hasVertexAt(PlanPoint place) {
        return place.equals(plan.from()) || place.equals(plan.to());
    }
}
