package org.bondspan.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount of money in whole cents of its currency. Immutable; sums beyond 64 bits throw {@link ArithmeticException}.
 */
public record Money(long cents) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);

    public static Money ofCents(long cents) {
        return new Money(cents);
    }

    /** Rounds to the nearest cent, halves away from zero. */
    public static Money of(BigDecimal amount) {
        return new Money(
                amount.movePointRight(2).setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(cents, other.cents));
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(cents, other.cents));
    }

    public Money times(long count) {
        return new Money(Math.multiplyExact(cents, count));
    }

    public boolean isZero() {
        return cents == 0;
    }

    /** With two decimals: {@code 1234.50}. */
    public BigDecimal amount() {
        return BigDecimal.valueOf(cents, 2);
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(cents, other.cents);
    }
}
