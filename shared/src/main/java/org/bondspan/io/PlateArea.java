package org.bondspan.io;

import java.math.BigDecimal;
import java.math.MathContext;

/** Areas of plates, which the Code compares in square feet. */
final class PlateArea {
    /** The international foot (1959) squared, exact. */
    private static final BigDecimal SQUARE_METRES_PER_SQUARE_FOOT = new BigDecimal("0.09290304");

    private PlateArea() {}

    /** To 34 digits: 0.18580608 square metres are exactly 2 square feet. */
    static BigDecimal squareFeetOfSquareMetres(BigDecimal squareMetres) {
        return squareMetres.divide(SQUARE_METRES_PER_SQUARE_FOOT, MathContext.DECIMAL128);
    }
}
