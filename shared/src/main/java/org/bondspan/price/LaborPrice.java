package org.bondspan.price;

import java.math.BigDecimal;

/** What an hour of labor costs, with all that goes with it. */
public record LaborPrice(BigDecimal perHour, String source) {}
