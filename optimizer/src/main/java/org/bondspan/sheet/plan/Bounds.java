package org.bondspan.sheet.plan;

import java.util.Collection;
import org.bondspan.site.PlanPoint;

/** A rectangle in plan units, parallel to the axes; may have no extent. */
public record Bounds(long west, long south, long east, long north) {
    /** Around all of them, at least one. */
    public static Bounds around(Collection<PlanPoint> places) {
        return new Bounds(
                places.stream().mapToLong(PlanPoint::x).min().orElseThrow(),
                places.stream().mapToLong(PlanPoint::y).min().orElseThrow(),
                places.stream().mapToLong(PlanPoint::x).max().orElseThrow(),
                places.stream().mapToLong(PlanPoint::y).max().orElseThrow());
    }

    public double width() {
        return (double) east - west;
    }

    public double height() {
        return (double) north - south;
    }

    public boolean contains(PlanPoint place) {
        return place.x() >= west && place.x() <= east && place.y() >= south && place.y() <= north;
    }
}
