package org.bondspan.usecase;

import org.bondspan.layout.Layout;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakingOff;

/** Takes off quantities and money of a route. */
public final class TakeOffSite {
    private TakeOffSite() {}

    /** Takes off an answer for that site, at its prices if it has any. */
    public static TakeOff of(Site site, Layout layout) {
        return TakingOff.of(site, layout, site.prices());
    }
}
