package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any length; against decimal arithmetic of arbitrary precision. */
class LengthLawsTest {
    private static final long MOST = 1_000_000_000_000_000_000L;

    static LongStream seeds() {
        return Seeds.upTo(300);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void keepsSixtyFourthsHundredthsAndMillimetres(long seed) {
        Random random = new Random(seed);
        int count = random.nextInt(2_000_000_000) - 1_000_000_000;
        BigDecimal amount = BigDecimal.valueOf(count);

        Length sixtyFourths = Length.ofInches(amount.divide(BigDecimal.valueOf(64)));
        assertThat(BigDecimal.valueOf(sixtyFourths.nanometres()).multiply(BigDecimal.valueOf(64)))
                .isEqualByComparingTo(amount.multiply(new BigDecimal("25400000")));

        BigDecimal hundredths = amount.movePointLeft(2);
        assertThat(Length.of(hundredths, LengthUnit.FOOT).in(LengthUnit.FOOT)).isEqualByComparingTo(hundredths);

        BigDecimal millimetres = amount.movePointLeft(3);
        assertThat(Length.of(millimetres, LengthUnit.METRE).in(LengthUnit.METRE))
                .isEqualByComparingTo(millimetres);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void addsUpToTheWholeInAnyOrder(long seed) {
        Random random = new Random(seed);
        int hundredths = random.nextInt(1_000_000);
        Length step = Length.of(new BigDecimal("0.01"), LengthUnit.FOOT);
        Length sum = Length.ofNanometres(hundredths * step.nanometres());
        assertThat(sum).isEqualTo(Length.of(BigDecimal.valueOf(hundredths, 2), LengthUnit.FOOT));

        Length a = Length.ofNanometres(random.nextLong() / 4);
        Length b = Length.ofNanometres(random.nextLong() / 4);
        assertThat(a.plus(b)).isEqualTo(b.plus(a));
        assertThat(a.plus(b).minus(b)).isEqualTo(a);
        assertThat(a.distanceTo(b)).isEqualTo(b.distanceTo(a)).isGreaterThanOrEqualTo(Length.ZERO);
    }

    /** A whole number is the nearest when its distance to the root is at most one half; the root is never one half. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void measuresARunAsTheRoundedRoot(long seed) {
        Random random = new Random(seed);
        long range = 1L << (1 + random.nextInt(59));
        long x = Math.min(random.nextLong(range), MOST);
        long y = Math.min(random.nextLong(range), MOST);
        long z = random.nextBoolean() ? 0 : Math.min(random.nextLong(range), MOST);
        BigDecimal square = BigDecimal.valueOf(x)
                .pow(2)
                .add(BigDecimal.valueOf(y).pow(2))
                .add(BigDecimal.valueOf(z).pow(2));
        BigDecimal root = square.sqrt(new MathContext(60, RoundingMode.HALF_EVEN));
        long nearest = root.setScale(0, RoundingMode.HALF_UP).longValueExact();
        assertThat(Length.ofRun(x, y, z)).isEqualTo(Length.ofNanometres(nearest));
        assertThat(Length.ofRun(-z, x, -y)).isEqualTo(Length.ofNanometres(nearest));
    }

    /**
     * The hardest cases: (f + 1/2) squared is f * f + f + 1/4, and with f = k * k the runs (f, k, 0) and (f, k, 1) have
     * the squares on either side of it.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void roundsRootsNextToOneHalf(long seed) {
        long k = 1 + new Random(seed).nextLong(1_000_000_000);
        assertThat(Length.ofRun(k * k, k, 0)).isEqualTo(Length.ofNanometres(k * k));
        assertThat(Length.ofRun(k * k, k, 1)).isEqualTo(Length.ofNanometres(k * k + 1));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void wasteIsNeverRoundedAway(long seed) {
        Random random = new Random(seed);
        Length length = Length.ofNanometres(random.nextLong(MOST));
        BigDecimal percent = BigDecimal.valueOf(random.nextInt(10_000), 2);
        BigDecimal exact = BigDecimal.valueOf(length.nanometres())
                .multiply(percent.add(BigDecimal.valueOf(100)))
                .movePointLeft(2);
        BigDecimal bought = BigDecimal.valueOf(length.increasedBy(percent).nanometres());
        assertThat(bought).isGreaterThanOrEqualTo(exact);
        assertThat(bought.subtract(exact)).isLessThan(BigDecimal.ONE);
    }
}
