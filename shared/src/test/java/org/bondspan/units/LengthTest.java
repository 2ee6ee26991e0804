package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the international foot of 1959: 0.3048 m exactly, hence the inch 25.4 mm. */
class LengthTest {

    @ParameterizedTest
    @CsvSource({
        "1, ft, 304800000",
        "0.01, ft, 3048000",
        "5, ft, 1524000000",
        "1, m, 1000000000",
        "0.001, m, 1000000",
        "1.524, m, 1524000000",
        "0.05, ft, 15240000",
        "-2.5, ft, -762000000",
        "1E+2, m, 100000000000",
        "100000000, m, 100000000000000000"
    })
    void isAWholeNumberOfNanometres(String amount, String unit, long nanometres) {
        assertThat(Length.of(new BigDecimal(amount), unit(unit))).isEqualTo(Length.ofNanometres(nanometres));
    }

    @ParameterizedTest
    @CsvSource({"1, 25400000", "0.015625, 396875", "30, 762000000", "0.5, 12700000", "0.625, 15875000"})
    void isExactInInchesDownToOneSixtyFourth(String inches, long nanometres) {
        assertThat(Length.ofInches(new BigDecimal(inches))).isEqualTo(Length.ofNanometres(nanometres));
    }

    @Test
    void takesTwelveInchesForAFoot() {
        assertThat(Length.ofInches(BigDecimal.valueOf(12))).isEqualTo(Length.ofFeet(1));
        assertThat(Length.ofFeet(1250)).isEqualTo(Length.of(BigDecimal.valueOf(381), LengthUnit.METRE));
    }

    @ParameterizedTest
    @CsvSource({
        "0.0000000004, 0",
        "0.0000000005, 1",
        "0.0000000014, 1",
        "0.0000000015, 2",
        "-0.0000000005, -1",
        "-0.0000000004, 0"
    })
    void roundsToTheNearestNanometreHalvesAwayFromZero(String metres, long nanometres) {
        assertThat(Length.of(new BigDecimal(metres), LengthUnit.METRE)).isEqualTo(Length.ofNanometres(nanometres));
    }

    @Test
    void addsSubtractsAndCompares() {
        Length long5 = Length.ofFeet(5);
        Length short3 = Length.ofFeet(3);
        assertThat(long5.plus(short3)).isEqualTo(Length.ofFeet(8));
        assertThat(long5.minus(short3)).isEqualTo(Length.ofFeet(2));
        assertThat(short3.minus(long5)).isEqualTo(Length.ofFeet(-2));
        assertThat(short3.distanceTo(long5)).isEqualTo(Length.ofFeet(2));
        assertThat(long5.distanceTo(short3)).isEqualTo(Length.ofFeet(2));
        assertThat(short3.isLessThan(long5)).isTrue();
        assertThat(long5.isLessThan(long5)).isFalse();
        assertThat(short3).isLessThan(long5);
        assertThat(Length.ZERO.isZero()).isTrue();
        assertThat(Length.ofNanometres(1).isZero()).isFalse();
    }

    /** Pythagorean numbers: three and four give five, two and three and six give seven. */
    @Test
    void measuresStraightRuns() {
        assertThat(Length.ofRun(3, -4, 0)).isEqualTo(Length.ofNanometres(5));
        assertThat(Length.ofRun(-2, 3, -6)).isEqualTo(Length.ofNanometres(7));
        assertThat(Length.ofRun(0, 0, -9)).isEqualTo(Length.ofNanometres(9));
        assertThat(Length.ofRun(0, 0, 0)).isEqualTo(Length.ZERO);
    }

    @Test
    void roundsAnObliqueRunToTheNearestNanometre() {
        assertThat(Length.ofRun(1, 1, 0)).as("1.41").isEqualTo(Length.ofNanometres(1));
        assertThat(Length.ofRun(1, 1, 1)).as("1.73").isEqualTo(Length.ofNanometres(2));
        assertThat(Length.ofRun(2, 1, 1)).as("2.449").isEqualTo(Length.ofNanometres(2));
    }

    @Test
    void isIncreasedByPercentAndRoundedUp() {
        assertThat(Length.ofNanometres(100).increasedBy(new BigDecimal("7.5"))).isEqualTo(Length.ofNanometres(108));
        assertThat(Length.ofNanometres(200).increasedBy(new BigDecimal("7.5"))).isEqualTo(Length.ofNanometres(215));
        assertThat(Length.ofFeet(12).increasedBy(BigDecimal.ZERO)).isEqualTo(Length.ofFeet(12));
        assertThat(Length.ofFeet(10).increasedBy(BigDecimal.TEN)).isEqualTo(Length.ofFeet(11));
    }

    @Test
    void throwsWhereALengthLeavesItsRange() {
        Length most = Length.ofNanometres(Long.MAX_VALUE);
        Length least = Length.ofNanometres(Long.MIN_VALUE);
        Length one = Length.ofNanometres(1);
        assertOverflow(() -> most.plus(one));
        assertOverflow(() -> least.minus(one));
        assertOverflow(() -> most.distanceTo(Length.ofNanometres(-1)));
        assertOverflow(() -> most.increasedBy(BigDecimal.ONE));
        assertOverflow(() -> Length.ofFeet(Long.MAX_VALUE / 304_800_000 + 1));
        assertOverflow(() -> Length.of(new BigDecimal("1e10"), LengthUnit.METRE));
        assertOverflow(() -> Length.ofInches(new BigDecimal("1e12")));
        assertOverflow(() -> Length.ofRun(Long.MIN_VALUE, 0, 0));
    }

    private static void assertOverflow(Runnable sum) {
        assertThatThrownBy(sum::run).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void knowsItsUnitsBySymbol() {
        assertThat(LengthUnit.find("ft")).contains(LengthUnit.FOOT);
        assertThat(LengthUnit.find("m")).contains(LengthUnit.METRE);
        assertThat(LengthUnit.find("in")).isEmpty();
        assertThat(LengthUnit.FOOT.weightSymbol()).isEqualTo("lb");
        assertThat(LengthUnit.METRE.weightSymbol()).isEqualTo("kg");
    }

    private static LengthUnit unit(String symbol) {
        return LengthUnit.find(symbol).orElseThrow();
    }
}
