package org.bondspan.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * A weight of copper, exact: the sum of lengths in nanometres times tabulated weights in tenths of a pound per 1000 ft.
 * Immutable.
 */
public record Weight(BigInteger grains) implements Comparable<Weight> {
    public static final Weight ZERO = new Weight(BigInteger.ZERO);

    /** One pound: 10,000 tenths of a pound per 1000 ft, over one foot. */
    private static final BigDecimal GRAINS_PER_POUND =
            BigDecimal.valueOf(10_000L).multiply(BigDecimal.valueOf(LengthUnit.FOOT.nanometres()));

    /** International avoirdupois pound (1959), exact. */
    private static final BigDecimal KILOGRAMS_PER_POUND = new BigDecimal("0.45359237");

    /** The bare copper of a conductor. */
    public static Weight of(WireSize size, Length length) {
        return new Weight(BigInteger.valueOf(size.tenthPoundsPerThousandFeet())
                .multiply(BigInteger.valueOf(length.nanometres())));
    }

    /** So many lb for feet, kg for metres, to the nearest grain. */
    public static Weight of(BigDecimal amount, LengthUnit unit) {
        BigDecimal pounds =
                unit == LengthUnit.FOOT ? amount : amount.divide(KILOGRAMS_PER_POUND, 30, RoundingMode.HALF_UP);
        return new Weight(pounds.multiply(GRAINS_PER_POUND)
                .setScale(0, RoundingMode.HALF_UP)
                .toBigInteger());
    }

    public Weight plus(Weight other) {
        return new Weight(grains.add(other.grains));
    }

    /** In lb for feet, in kg for metres, to 12 decimals: for printing only. */
    public BigDecimal in(LengthUnit unit) {
        BigDecimal pounds = new BigDecimal(grains).divide(GRAINS_PER_POUND, 15, RoundingMode.HALF_UP);
        return unit == LengthUnit.FOOT ? pounds : pounds.multiply(KILOGRAMS_PER_POUND);
    }

    public boolean isZero() {
        return grains.signum() == 0;
    }

    @Override
    public int compareTo(Weight other) {
        return grains.compareTo(other.grains);
    }
}
