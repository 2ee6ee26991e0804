package org.bondspan.takeoff;

import java.math.BigDecimal;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Money;

/**
 * What all rows cost together.
 *
 * @param exact before rounding
 * @param crossings walls passed
 * @param rounding what the total, rounded once, is more than the rows, each rounded to the cent
 */
public record Total(ExactMoney exact, Money material, BigDecimal hours, Money labor, Money crossings, Money rounding) {

    /** The sum of the rows, each rounded to the cent. */
    public Money ofRows() {
        return material.plus(labor).plus(crossings);
    }

    /** Rounded once. */
    public Money total() {
        return ofRows().plus(rounding);
    }
}
