package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Areas against ASTM B258, weights against ASTM B8. */
class WireSizeTest {
    /** Density of copper for conductor tables, 8.89 g/cm3 at 20 C (NBS Handbook 100; text of ASTM B496). */
    private static final double POUNDS_PER_CUBIC_INCH = 0.32117;

    /** Concentric strand is 2 % longer than the conductor (note of ASTM B8, from memory; ASTM B496 has the same). */
    private static final double STRANDING = 1.02;

    static Stream<WireSize> gauges() {
        return Arrays.stream(WireSize.values()).filter(size -> size.label().endsWith(" AWG"));
    }

    static Stream<WireSize> eightGaugeAndLarger() {
        return Arrays.stream(WireSize.values()).filter(size -> size.isAtLeast(WireSize.AWG_8));
    }

    /** ASTM B258: 36 AWG is 5 mil, 4/0 is 460 mil, with 38 sizes between them in geometric progression. */
    private static double diameterInMils(WireSize size) {
        String number = size.label().replace(" AWG", "");
        int gauge = number.endsWith("/0") ? 1 - Integer.parseInt(number.replace("/0", "")) : Integer.parseInt(number);
        return 5 * Math.pow(92, (36 - gauge) / 39.0);
    }

    @ParameterizedTest
    @MethodSource("gauges")
    void hasTheAreaOfTheGaugeFormula(WireSize size) {
        double exact = Math.pow(diameterInMils(size), 2);
        assertThat((double) size.circularMils()).isCloseTo(exact, Percentage.withPercentage(0.1));
    }

    /**
     * How Chapter 9 Table 8 comes to its areas: the diameter rounded to 0.1 mil as ASTM B258 prints it, squared,
     * rounded to four significant digits, but never finer than tens (12 and 14 AWG). How many digits was found by
     * trying.
     */
    @ParameterizedTest
    @MethodSource("gauges")
    void hasTheAreaOfTheRoundedDiameter(WireSize size) {
        BigDecimal diameter = BigDecimal.valueOf(diameterInMils(size)).setScale(1, RoundingMode.HALF_UP);
        BigDecimal square = diameter.multiply(diameter);
        BigDecimal printed =
                square.round(new MathContext(4, RoundingMode.HALF_UP)).setScale(-1, RoundingMode.HALF_UP);
        assertThat(BigDecimal.valueOf(size.circularMils())).isEqualByComparingTo(printed);
    }

    /** The diameters that public copies of ASTM B258 print, in mils, typed out beside the formula. */
    @ParameterizedTest
    @CsvSource({
        "14 AWG, 64.1",
        "8 AWG, 128.5",
        "6 AWG, 162.0",
        "4 AWG, 204.3",
        "3 AWG, 229.4",
        "2 AWG, 257.6",
        "1 AWG, 289.3",
        "1/0 AWG, 324.9",
        "2/0 AWG, 364.8",
        "3/0 AWG, 409.6",
        "4/0 AWG, 460.0"
    })
    void hasTheAreaOfThePrintedDiameter(String label, double mils) {
        assertThat(diameterInMils(size(label))).isCloseTo(mils, within(0.05));
        assertThat((double) size(label).circularMils()).isCloseTo(mils * mils, Percentage.withPercentage(0.05));
    }

    /** Web tables print the formula's areas without rounding the diameter first, or misprint them: not Table 8. */
    @ParameterizedTest
    @CsvSource({"6 AWG, 26250", "2 AWG, 66370", "1/0 AWG, 105500", "8 AWG, 18510"})
    void doesNotFollowAreasThatTable8DoesNotHave(String label, long wrong) {
        assertThat(size(label).circularMils()).isNotEqualTo(wrong);
    }

    @ParameterizedTest
    @EnumSource
    void namesAreasInThousandsOfCircularMils(WireSize size) {
        if (size.label().endsWith(" kcmil")) {
            long thousands = Long.parseLong(size.label().replace(" kcmil", ""));
            assertThat(size.circularMils()).isEqualTo(1000 * thousands);
        } else {
            assertThat(size.circularMils()).isLessThan(250_000);
        }
    }

    /** Pounds per 1000 ft: a round bar of that area and the density above, 2 % longer for its strands. */
    @ParameterizedTest
    @MethodSource("eightGaugeAndLarger")
    void weighsWhatStrandedCopperOfItsAreaWeighs(WireSize size) {
        double squareInches = Math.PI / 4 * size.circularMils() * 1e-6;
        double pounds = squareInches * 12_000 * POUNDS_PER_CUBIC_INCH * STRANDING;
        assertThat(size.tenthPoundsPerThousandFeet() / 10.0).isCloseTo(pounds, Percentage.withPercentage(0.1));
    }

    /** Sizes for which no tabulated weight was at hand: that formula with its factor written out, to 0.1 lb. */
    @ParameterizedTest
    @CsvSource({
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "700 kcmil",
        "900 kcmil",
        "1250 kcmil",
        "1500 kcmil",
        "1750 kcmil",
        "2000 kcmil"
    })
    void weighsByTheFormulaWhereNothingIsTabulated(String label) {
        BigDecimal pounds = new BigDecimal("0.00308750")
                .multiply(BigDecimal.valueOf(size(label).circularMils()));
        assertThat(BigDecimal.valueOf(size(label).tenthPoundsPerThousandFeet(), 1))
                .isEqualByComparingTo(pounds.setScale(1, RoundingMode.HALF_UP));
    }

    /**
     * Bare copper, Class B strand, ASTM B8, lb per 1000 ft. 1/0 to 4/0 AWG, 250 and 500 kcmil are also in a utility's
     * material standard and on a cable maker's sheet of bare grounding conductor; the other sizes from 300 kcmil on
     * from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "8 AWG, 51.0",
        "6 AWG, 81.0",
        "4 AWG, 128.9",
        "2 AWG, 204.9",
        "1 AWG, 258.4",
        "1/0 AWG, 325.8",
        "2/0 AWG, 410.9",
        "3/0 AWG, 518.1",
        "4/0 AWG, 653.3",
        "250 kcmil, 771.9",
        "300 kcmil, 926.3",
        "350 kcmil, 1081",
        "400 kcmil, 1235",
        "500 kcmil, 1544",
        "600 kcmil, 1853",
        "750 kcmil, 2316",
        "1000 kcmil, 3088"
    })
    void weighsWhatTheStandardTabulates(String label, BigDecimal pounds) {
        assertThat(BigDecimal.valueOf(size(label).tenthPoundsPerThousandFeet(), 1))
                .isEqualByComparingTo(pounds);
    }

    /** ASTM B8 values that a strander's sheet misprints as 167.0 and 253.3. */
    @ParameterizedTest
    @CsvSource({"3 AWG, 1625, 1670", "1 AWG, 2584, 2533"})
    void weighsAsTheStandardAndNotAsAMisprintedSheet(String label, int tenths, int misprinted) {
        assertThat(size(label).tenthPoundsPerThousandFeet()).isEqualTo(tenths).isNotEqualTo(misprinted);
    }

    @Test
    void isOrderedByArea() {
        List<WireSize> sizes = List.of(WireSize.values());
        for (int i = 1; i < sizes.size(); i++) {
            WireSize smaller = sizes.get(i - 1);
            WireSize larger = sizes.get(i);
            assertThat(larger.circularMils()).isGreaterThan(smaller.circularMils());
            assertThat(larger.isAtLeast(smaller)).isTrue();
            assertThat(smaller.isAtLeast(larger)).isFalse();
            assertThat(WireSize.largerOf(smaller, larger)).isEqualTo(larger);
            assertThat(WireSize.smallerOf(smaller, larger)).isEqualTo(smaller);
            assertThat(WireSize.largerOf(larger, smaller)).isEqualTo(larger);
            assertThat(WireSize.smallerOf(larger, smaller)).isEqualTo(smaller);
        }
    }

    @Test
    void isHeavierWhereItIsLarger() {
        assertThat(Arrays.stream(WireSize.values()).map(WireSize::tenthPoundsPerThousandFeet))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource
    void isFoundByItsLabel(WireSize size) {
        assertThat(WireSize.find(size.label())).contains(size);
        assertThat(size.isAtLeast(size)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"500", "500kcmil", "500 KCMIL", "3/0", "0 AWG", "' 3/0 AWG'", "''"})
    void isNotFoundByAnythingElse(String label) {
        assertThat(WireSize.find(label)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "1, 14 AWG",
        "4110, 14 AWG",
        "4111, 12 AWG",
        "211600, 4/0 AWG",
        "211601, 250 kcmil",
        "249999, 250 kcmil",
        "250000, 250 kcmil",
        "250001, 300 kcmil",
        "2000000, 2000 kcmil"
    })
    void findsTheSmallestSizeOfAnArea(long circularMils, String label) {
        assertThat(WireSize.findAtLeast(circularMils)).contains(size(label));
    }

    @Test
    void findsNoSizeBeyondTheLargest() {
        assertThat(WireSize.findAtLeast(2_000_001)).isEmpty();
    }

    private static WireSize size(String label) {
        return WireSize.find(label).orElseThrow();
    }
}
