package org.bondspan.usecase;

import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakingOff;
import org.bondspan.takeoff.Total;
import org.bondspan.units.Money;

/** Takes off quantities and money of a route. */
public final class TakeOffSite {
    private TakeOffSite() {}

    /** Takes off an answer just found for that site, at its prices if it has any. */
    public static TakeOff of(Site site, Layout layout) {
        return TakingOff.of(site, layout, site.prices());
    }

    /** Takes off the route of a result file of that site, at its prices if it has any. */
    public static TakeOff ofResult(Site site, Layout layout) {
        return TakingOff.ofResult(site, layout);
    }

    /** The installed cost of an answer; empty without prices, and where one that it takes is not stated. */
    public static Optional<Money> findCost(Site site, Layout layout) {
        return of(site, layout).total().map(Total::total);
    }
}
