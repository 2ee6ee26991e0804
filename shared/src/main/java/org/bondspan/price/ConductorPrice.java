package org.bondspan.price;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.bondspan.units.Length;
import org.bondspan.units.Money;

/**
 * What one size of bare copper costs.
 *
 * @param perThousandFeet stated price; without it the price of copper by weight counts
 * @param hours of labor per 1000 ft, by way of installation
 * @param reel longest length in one piece
 */
public record ConductorPrice(
        Optional<Money> perThousandFeet, Map<Installation, BigDecimal> hours, Optional<Length> reel, String source) {
    public ConductorPrice {
        hours = Map.copyOf(hours);
    }
}
