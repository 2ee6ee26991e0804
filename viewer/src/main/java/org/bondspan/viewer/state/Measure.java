package org.bondspan.viewer.state;

import java.util.Optional;
import org.bondspan.layout.MeasuredWay;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.Length;

/**
 * A measurement between two places of a level.
 *
 * @param to empty until the second place is given
 * @param along the shortest way that new copper may take; empty while unknown
 */
public record Measure(String level, PlanPoint from, Optional<PlanPoint> to, Optional<Along> along) {

    /** The outcome of a search for a way of copper; {@code way} is empty where there is none. */
    public record Along(Optional<MeasuredWay> way) {}

    public static Measure begun(String level, PlanPoint from) {
        return new Measure(level, from, Optional.empty(), Optional.empty());
    }

    public Measure ended(PlanPoint place) {
        return new Measure(level, from, Optional.of(place), Optional.empty());
    }

    public Measure withWay(Along way) {
        return new Measure(level, from, to, Optional.of(way));
    }

    /** The straight distance in plan; zero until the second place is given. */
    public Length straight() {
        return to.map(end -> Length.ofRun(end.x() - from.x(), end.y() - from.y(), 0))
                .orElse(Length.ZERO);
    }
}
