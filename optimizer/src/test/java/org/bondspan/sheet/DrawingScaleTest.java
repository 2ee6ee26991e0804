package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.bondspan.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A point is 1/72 in; what a scale says is its own definition. */
class DrawingScaleTest {
    private static DrawingScale find(LengthUnit unit, String words) {
        return DrawingScale.usual(unit).stream()
                .filter(scale -> scale.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {"1\" = 20', 20, 72", "1/8\" = 1'-0\", 8, 72", "3/32\" = 1'-0\", 32, 216", "1/16\" = 1'-0\", 1, 4.5"
            })
    void feetAreAsLongOnPaperAsTheScaleSays(String words, double feet, double points) {
        double scaled = feet
                * LengthUnit.FOOT.nanometres()
                * find(LengthUnit.FOOT, words).pointsPerNanometre();

        assertThat(scaled).isCloseTo(points, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1 : 100, 2.54, 72", "1 : 50, 1.27, 72"})
    void metresAreAsLongOnPaperAsTheScaleSays(String words, double metres, double points) {
        double scaled = metres
                * LengthUnit.METRE.nanometres()
                * find(LengthUnit.METRE, words).pointsPerNanometre();

        assertThat(scaled).isCloseTo(points, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "600, 400, 2160, 1440, 1\" = 20'",
                "600, 400, 2159, 1440, 1\" = 30'",
                "120, 80, 720, 720, 1/16\" = 1'-0\"",
                "1000000, 10, 720, 720, 1\" = 100000'"
            })
    void theLargestUsualScaleThatFitsIsTaken(
            double feetWide, double feetHigh, double width, double height, String words) {
        double foot = LengthUnit.FOOT.nanometres();

        assertThat(DrawingScale.ofUsual(LengthUnit.FOOT)
                        .fitting(feetWide * foot, feetHigh * foot, width, height)
                        .words())
                .isEqualTo(words);
    }
}
