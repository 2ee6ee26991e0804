package org.bondspan.price;

import java.math.BigDecimal;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/**
 * What bare copper conductor costs by weight.
 *
 * @param perPound price of the metal
 * @param ratio price of the conductor to that of the metal in it
 * @param date day of the price, as written
 */
public record CopperPrice(BigDecimal perPound, BigDecimal ratio, String date, String source) {

    /** For 1000 ft of a size, rounded to the cent. */
    public Money perThousandFeet(WireSize size) {
        BigDecimal pounds = BigDecimal.valueOf(size.tenthPoundsPerThousandFeet(), 1);
        return Money.of(perPound.multiply(ratio).multiply(pounds));
    }

    /** Where the price comes from, with its date and ratio. */
    public String describe() {
        return "copper at " + perPound.toPlainString() + " per lb of " + date + ", times " + ratio.toPlainString()
                + (source.isEmpty() ? "" : "; " + source);
    }
}
