package org.bondspan.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;

/**
 * A length, or one plan coordinate: a whole number of nanometres, which is exact for feet, inches down to 1/64 and
 * metres. Immutable; sums that leave the 64-bit range throw {@link ArithmeticException}.
 */
public record Length(long nanometres) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);
    private static final long NANOMETRES_PER_INCH = 25_400_000L;

    public static Length ofNanometres(long nanometres) {
        return new Length(nanometres);
    }

    /** Rounds to the nearest nanometre, halves away from zero. */
    public static Length of(BigDecimal amount, LengthUnit unit) {
        BigDecimal nanometres = amount.multiply(BigDecimal.valueOf(unit.nanometres()));
        return new Length(nanometres.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    public static Length ofFeet(long feet) {
        return new Length(Math.multiplyExact(feet, LengthUnit.FOOT.nanometres()));
    }

    /** Exact for any number of inches with a finite decimal down to a nanometre; rounds beyond. */
    public static Length ofInches(BigDecimal inches) {
        BigDecimal nanometres = inches.multiply(BigDecimal.valueOf(NANOMETRES_PER_INCH));
        return new Length(nanometres.setScale(0, RoundingMode.HALF_UP).longValueExact());
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(nanometres, other.nanometres));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(nanometres, other.nanometres));
    }

    /** Distance between two coordinates or heights, never negative. */
    public Length distanceTo(Length other) {
        return new Length(Math.absExact(Math.subtractExact(nanometres, other.nanometres)));
    }

    /**
     * Length of a straight run with these components, rounded to the nearest nanometre; exact when it runs along one of
     * them. Magnitudes up to 1e18 nm each.
     */
    public static Length ofRun(long dx, long dy, long dz) {
        long x = Math.absExact(dx);
        long y = Math.absExact(dy);
        long z = Math.absExact(dz);
        if (x + y == 0 || y + z == 0 || x + z == 0) {
            return new Length(x + y + z);
        }
        BigInteger square = square(x).add(square(y)).add(square(z));
        BigInteger floor = square.sqrt();
        // floor + 1/2 squared is floor^2 + floor + 1/4: the integer square lies above it exactly when it exceeds the
        // sum.
        boolean up = square.compareTo(floor.multiply(floor).add(floor)) > 0;
        return new Length((up ? floor.add(BigInteger.ONE) : floor).longValueExact());
    }

    private static BigInteger square(long value) {
        BigInteger big = BigInteger.valueOf(value);
        return big.multiply(big);
    }

    /** This length increased by so many percent, rounded up to the next nanometre: waste is never rounded away. */
    public Length increasedBy(BigDecimal percent) {
        BigDecimal factor = BigDecimal.ONE.add(percent.movePointLeft(2));
        return new Length(BigDecimal.valueOf(nanometres)
                .multiply(factor)
                .setScale(0, RoundingMode.CEILING)
                .longValueExact());
    }

    public boolean isZero() {
        return nanometres == 0;
    }

    public boolean isLessThan(Length other) {
        return nanometres < other.nanometres;
    }

    /** This length in the unit, to 12 decimals: for printing only. */
    public BigDecimal in(LengthUnit unit) {
        return BigDecimal.valueOf(nanometres).divide(BigDecimal.valueOf(unit.nanometres()), 12, RoundingMode.HALF_UP);
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(nanometres, other.nanometres);
    }
}
