package org.bondspan.network;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bondspan.site.PlanPoint;
import org.locationtech.jts.algorithm.RayCrossingCounter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/**
 * What a straight stretch does to polygons, by trying places on it, each counted by rays in the geometry library. Edges
 * of polygons with coordinates from 0 to 12 cut a line of whole coordinate in twelfths or larger parts, two of them at
 * least 1/132 apart: with 300 places to a unit none is missed.
 */
record SampledStretch(PlanPoint from, PlanPoint to) {
    private static final int PER_UNIT = 300;

    boolean liesInClosed(List<PlanPoint> outline) {
        return locations(outline).noneMatch(location -> location == Location.EXTERIOR);
    }

    boolean touchesInside(List<PlanPoint> outline) {
        return locations(outline).anyMatch(location -> location == Location.INTERIOR);
    }

    private Stream<Integer> locations(List<PlanPoint> outline) {
        Coordinate[] ring = RandomPolygons.ring(outline);
        int units = Math.toIntExact(Math.max(Math.abs(to.x() - from.x()), Math.abs(to.y() - from.y())));
        int places = units * PER_UNIT;
        return IntStream.range(0, places)
                .mapToObj(i -> RayCrossingCounter.locatePointInRing(place((i + 0.5) / places), ring));
    }

    private Coordinate place(double share) {
        return new Coordinate(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
    }
}
