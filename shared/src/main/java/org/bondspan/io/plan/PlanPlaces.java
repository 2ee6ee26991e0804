package org.bondspan.io.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.PlanPoint;

/**
 * Makes plan coordinates that mean one place equal: one within 0.05 ft of an earlier place, in x and in y, is that
 * place, the first of them where there are several. Only places that stayed themselves attract later ones, so that a
 * row of near places does not creep. Constant time for each place.
 */
public final class PlanPlaces {
    /** 0.05 ft in nanometres, the edge included. */
    public static final long TOLERANCE = 15_240_000L;

    private record Cell(long column, long row) {}

    private record Place(int order, PlanPoint at) {}

    /** Two places of one cell would be within the tolerance of each other, so that each cell holds at most one. */
    private final Map<Cell, Place> places = new HashMap<>();

    /** The place that this one is. Magnitudes up to 1e18 nm. */
    public PlanPoint snap(PlanPoint point) {
        long column = Math.floorDiv(point.x(), TOLERANCE);
        long row = Math.floorDiv(point.y(), TOLERANCE);
        Optional<Place> earlier = findEarlier(point, column, row);
        if (earlier.isPresent()) {
            return earlier.get().at();
        }
        places.put(new Cell(column, row), new Place(places.size(), point));
        return point;
    }

    private Optional<Place> findEarlier(PlanPoint point, long column, long row) {
        Optional<Place> first = Optional.empty();
        for (long c = column - 1; c <= column + 1; c++) {
            for (long r = row - 1; r <= row + 1; r++) {
                Place place = places.get(new Cell(c, r));
                if (place != null
                        && near(place.at(), point)
                        && (first.isEmpty() || place.order() < first.get().order())) {
                    first = Optional.of(place);
                }
            }
        }
        return first;
    }

    private static boolean near(PlanPoint a, PlanPoint b) {
        return Math.abs(a.x() - b.x()) <= TOLERANCE && Math.abs(a.y() - b.y()) <= TOLERANCE;
    }
}
