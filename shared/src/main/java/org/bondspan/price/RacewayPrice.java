package org.bondspan.price;

import java.math.BigDecimal;
import java.util.Optional;
import org.bondspan.units.Money;

/** Raceway for a conductor that needs protection: price and hours per 1000 ft, its fittings and straps included. */
public record RacewayPrice(
        String description, Optional<Money> perThousandFeet, Optional<BigDecimal> hours, String source) {}
