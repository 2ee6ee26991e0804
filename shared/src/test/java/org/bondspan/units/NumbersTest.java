package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {

    /** Halves go away from zero, also those that no binary fraction can hold; no trailing zeros, no exponent. */
    @ParameterizedTest
    @CsvSource({
        "1.005, 1.01",
        "1.004999999999, 1",
        "2.675, 2.68",
        "-1.005, -1.01",
        "0, 0",
        "0.004, 0",
        "-0.004, 0",
        "0.005, 0.01",
        "412.50, 412.5",
        "1200, 1200",
        "1E+3, 1000",
        "99.995, 100"
    })
    void roundsToHundredths(String value, String written) {
        assertThat(Numbers.rounded(new BigDecimal(value)).toString()).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1234.5 | 1,234.50",
                "0.005 | 0.01",
                "0.015 | 0.02",
                "0.025 | 0.03",
                "-0.5 | -0.50",
                "1E+6 | 1,000,000.00"
            })
    void printsTwoDecimalsAndThousands(String value, String printed) {
        assertThat(Numbers.print(new BigDecimal(value))).isEqualTo(printed);
    }

    @Test
    void printsLengthsAndWeightsWithTheirUnits() {
        Length length = Length.of(new BigDecimal("412.5"), LengthUnit.FOOT);
        assertThat(Numbers.print(length, LengthUnit.FOOT)).isEqualTo("412.50 ft");
        assertThat(Numbers.print(length, LengthUnit.METRE)).isEqualTo("125.73 m");
        Weight weight = Weight.of(WireSize.AWG_3_0, length);
        assertThat(Numbers.print(weight, LengthUnit.FOOT)).isEqualTo("213.72 lb");
        assertThat(Numbers.print(weight, LengthUnit.METRE)).isEqualTo("96.94 kg");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"2000000 | 2,000 kcmil", "167800 | 167.8 kcmil", "16510 | 16.51 kcmil", "137501 | 137.501 kcmil"})
    void printsAreasAsTheTradeSaysThem(long circularMils, String printed) {
        assertThat(Numbers.printArea(circularMils)).isEqualTo(printed);
    }

    @Test
    void printsAlikeEverywhere() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Numbers.print(new BigDecimal("1234.5"))).isEqualTo("1,234.50");
            assertThat(Numbers.printArea(2_000_000)).isEqualTo("2,000 kcmil");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void countsThingsInWords() {
        assertThat(Numbers.count(0, "violation")).isEqualTo("0 violations");
        assertThat(Numbers.count(1, "violation")).isEqualTo("1 violation");
        assertThat(Numbers.count(12, "violation")).isEqualTo("12 violations");
    }
}
