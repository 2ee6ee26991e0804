package org.bondspan.viewer.plan;

import java.util.List;
import org.bondspan.site.PlanPoint;

/**
 * A distance drawn on the plan.
 *
 * @param places from one end to the other; at least one
 * @param words what stands beside it, such as {@code 41.50 ft straight}; may be empty
 */
public record Measured(Way way, List<PlanPoint> places, String words) {
    public Measured {
        places = List.copyOf(places);
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a measured distance without places");
        }
    }

    /** Straight across, or where conductors may run. */
    public enum Way {
        STRAIGHT,
        ALONG_ROUTES
    }
}
