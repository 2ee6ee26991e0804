package org.bondspan.usecase;

import org.bondspan.layout.Layout;
import org.bondspan.network.Interconnection;
import org.bondspan.site.Site;

/** Finds the interconnection of a site with the least copper, proven least. */
public final class RouteSite {
    private RouteSite() {}

    /**
     * The answer; its status says whether there is one.
     *
     * @throws TooFineException when the plan is so large and so fine that weights cannot be compared exactly
     */
    public static Layout of(Site site) {
        try {
            return Interconnection.of(site);
        } catch (ArithmeticException overflow) {
            throw new TooFineException(overflow);
        }
    }
}
