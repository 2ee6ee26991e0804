package org.bondspan.layout;

import java.math.BigDecimal;
import java.util.Optional;
import org.bondspan.units.Weight;

/**
 * How little copper a site takes, as far as a search within limits could tell.
 *
 * @param status whether the weight is proven least; empty when the search ended with neither an interconnection nor a
 *     proof that there is none
 * @param weight of the interconnection found; empty without one
 * @param lowerBound proven: no lawful interconnection on this site weighs less; empty without a weight
 * @param gapPercent how far the weight may lie above the least, in percent of the bound; 0 when proven
 */
public record LeastCopper(
        Optional<Status> status, Optional<Weight> weight, Optional<Weight> lowerBound, BigDecimal gapPercent) {
    public static final LeastCopper NOT_KNOWN =
            new LeastCopper(Optional.empty(), Optional.empty(), Optional.empty(), BigDecimal.ZERO);

    /** Of the answer with the least copper. */
    public static LeastCopper of(Layout layout) {
        return new LeastCopper(
                Optional.of(layout.status()),
                layout.copper().map(Copper::weight),
                layout.lowerBound(),
                layout.gapPercent());
    }

    /** Whether there is a weight, and it may not be the least. */
    public boolean isOnlyBestFound() {
        return status.filter(Status.BEST_FOUND::equals).isPresent();
    }
}
