package org.bondspan.usecase;

import java.util.Optional;
import org.bondspan.layout.MeasuredWay;
import org.bondspan.network.ShortestRun;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;

/** Measures along permitted runs of copper from one place of a plan to another. */
public final class MeasureCopper {
    private MeasureCopper() {}

    /** A place pointed at on the plan of a level. */
    public record PlaceOnPlan(String level, PlanPoint at) {}

    /**
     * The shortest run of new copper from place to place. Where copper may not run at a place, the nearest junction of
     * permitted runs on its level stands for it. Empty when there is no such run.
     *
     * @throws IllegalArgumentException when the site has no such level
     */
    public static Optional<MeasuredWay> between(Site site, PlaceOnPlan from, PlaceOnPlan to) {
        return ShortestRun.between(site, from.level(), from.at(), to.level(), to.at());
    }
}
