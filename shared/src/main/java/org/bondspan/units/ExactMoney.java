package org.bondspan.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount of money before it is rounded to cents, exact: sums of lengths in nanometres times prices in cents per 1000
 * ft, and of whole cents. Immutable.
 *
 * @param grains cents per 1000 ft, times nanometres
 */
public record ExactMoney(BigDecimal grains) implements Comparable<ExactMoney> {
    public static final ExactMoney ZERO = new ExactMoney(BigDecimal.ZERO);

    /** Grains in one cent: nanometres in 1000 ft. */
    public static final long GRAINS_PER_CENT = 1000 * LengthUnit.FOOT.nanometres();

    public ExactMoney {
        BigDecimal stripped = grains.stripTrailingZeros();
        grains = stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** What a length costs at that price per 1000 ft. */
    public static ExactMoney of(Money perThousandFeet, Length length) {
        return new ExactMoney(
                BigDecimal.valueOf(perThousandFeet.cents()).multiply(BigDecimal.valueOf(length.nanometres())));
    }

    public static ExactMoney of(Money money) {
        return new ExactMoney(BigDecimal.valueOf(money.cents()).multiply(BigDecimal.valueOf(GRAINS_PER_CENT)));
    }

    public ExactMoney plus(ExactMoney other) {
        return new ExactMoney(grains.add(other.grains));
    }

    /** This amount increased by so many percent, exact. */
    public ExactMoney increasedBy(BigDecimal percent) {
        return new ExactMoney(grains.multiply(BigDecimal.ONE.add(percent.movePointLeft(2))));
    }

    /** To the nearest cent, halves away from zero. */
    public Money rounded() {
        return Money.ofCents(grains.divide(BigDecimal.valueOf(GRAINS_PER_CENT), 0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    @Override
    public int compareTo(ExactMoney other) {
        return grains.compareTo(other.grains);
    }
}
