package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pounds per 1000 ft: ASTM B8. The pound: 0.45359237 kg exactly, international agreement of 1959. */
class WeightTest {
    private static final BigDecimal KILOGRAMS_PER_POUND = new BigDecimal("0.45359237");

    static LongStream seeds() {
        return Seeds.upTo(200);
    }

    @ParameterizedTest
    @CsvSource({"3/0 AWG, 1000, 518.1", "3/0 AWG, 412, 213.4572", "6 AWG, 10, 0.81", "250 kcmil, 1, 0.7719"})
    void isTheLengthTimesTheTabulatedWeight(String size, long feet, String pounds) {
        Weight weight = Weight.of(WireSize.find(size).orElseThrow(), Length.ofFeet(feet));
        assertThat(weight.in(LengthUnit.FOOT)).isEqualByComparingTo(pounds);
        assertThat(weight.in(LengthUnit.METRE))
                .isEqualByComparingTo(new BigDecimal(pounds).multiply(KILOGRAMS_PER_POUND));
    }

    /** 204.9 lb per 1000 ft is 204.9 x 0.45359237 / 304.8 kg per metre. */
    @Test
    void weighsMetresInKilograms() {
        Weight weight = Weight.of(WireSize.AWG_2, Length.of(new BigDecimal("304.8"), LengthUnit.METRE));
        assertThat(weight.in(LengthUnit.METRE)).isEqualByComparingTo("92.941076613");
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void partsWeighWhatTheWholeWeighs(long seed) {
        Random random = new Random(seed);
        WireSize size = random.nextBoolean() ? WireSize.AWG_8 : WireSize.AWG_3_0;
        Length a = Length.ofNanometres(random.nextLong(1_000_000_000_000_000L));
        Length b = Length.ofNanometres(random.nextLong(1_000_000_000_000_000L));
        Weight parts = Weight.of(size, a).plus(Weight.of(size, b));
        assertThat(parts).isEqualTo(Weight.of(size, a.plus(b)));
        assertThat(Weight.of(size, a).compareTo(Weight.of(size, b))).isEqualTo(a.compareTo(b));
    }

    /** Far beyond 64 bits: ten thousand kilometres of the heaviest conductor. */
    @Test
    void doesNotOverflow() {
        Length far = Length.of(new BigDecimal("304800"), LengthUnit.METRE);
        Weight sum = Weight.ZERO;
        for (int i = 0; i < 1000; i++) {
            sum = sum.plus(Weight.of(WireSize.KCMIL_250, far));
        }
        assertThat(sum.in(LengthUnit.FOOT)).isEqualByComparingTo("771900000");
    }

    @Test
    void isZeroForNoLength() {
        assertThat(Weight.of(WireSize.AWG_4, Length.ZERO)).isEqualTo(Weight.ZERO);
        assertThat(Weight.ZERO.isZero()).isTrue();
        assertThat(Weight.of(WireSize.AWG_4, Length.ofNanometres(1)).isZero()).isFalse();
    }
}
