package org.bondspan.price;

import java.math.BigDecimal;
import org.bondspan.units.Length;

/** Labor on what runs higher than that above the floor takes that many times as long. */
public record HeightFactor(Length above, BigDecimal factor) {}
