package org.bondspan.usecase;

import org.bondspan.layout.Layout;
import org.bondspan.network.Interconnection;
import org.bondspan.site.Site;

/** Finds the interconnection of a site with the least copper, proven least where limits allow. */
public final class RouteSite {
    private RouteSite() {}

    /** As {@link #of(Site, RouteLimits)}, without limits. */
    public static Layout of(Site site) {
        return of(site, RouteLimits.none());
    }

    /**
     * The answer; its status says whether there is one, and whether it is proven least.
     *
     * @throws TooFineException when the plan is so large and so fine that weights cannot be compared exactly
     * @throws NothingFoundException when no lawful tie was found though none was proven impossible
     */
    public static Layout of(Site site, RouteLimits limits) {
        try {
            return Interconnection.find(site, limits.forNetwork()).orElseThrow(NothingFoundException::new);
        } catch (ArithmeticException overflow) {
            throw new TooFineException(overflow);
        }
    }
}
