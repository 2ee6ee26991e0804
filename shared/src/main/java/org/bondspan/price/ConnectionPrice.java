package org.bondspan.price;

import java.math.BigDecimal;
import java.util.Optional;
import org.bondspan.units.Money;

/** Material price and hours of one connection. */
public record ConnectionPrice(Optional<Money> price, Optional<BigDecimal> hours, String source) {}
