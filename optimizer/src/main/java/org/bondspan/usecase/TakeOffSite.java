package org.bondspan.usecase;

import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakingOff;

/** Takes off quantities and money of a route. */
public final class TakeOffSite {
    private TakeOffSite() {}

    /**
     * Takes off an answer for that site.
     *
     * @param prices in place of those of the site
     */
    public static TakeOff of(Site site, Layout layout, Optional<PriceBook> prices) {
        return TakingOff.of(site, layout, prices.or(site::prices));
    }
}
