package org.bondspan.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Pen;
import org.bondspan.sheet.plan.Tint;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast by the formula of WCAG 2.1 (relative luminance); 1.4.11 asks 3 : 1 for graphics. */
class PaletteTest {
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource(Palette.class)
    void everyTintOfALineStandsOutFromThePaper(Palette palette) {
        double paper = luminance(palette.of(Tint.PAPER));
        assertThat(Arrays.stream(Tint.values()).filter(tint -> tint != Tint.PAPER && tint != Tint.PALE))
                .allSatisfy(tint -> {
                    double line = luminance(palette.of(tint));
                    assertThat((Math.max(line, paper) + 0.05) / (Math.min(line, paper) + 0.05))
                            .isGreaterThanOrEqualTo(3);
                });
    }

    @org.junit.jupiter.api.Test
    void conductorsAndMetalAreToldApartWithoutColour() {
        List<Pen> pens = Stream.of(LineKind.values()).map(LineKind::pen).toList();
        assertThat(pens.stream().map(pen -> List.of(pen.width(), pen.dash(), pen.letter(), pen.crossed())))
                .doesNotHaveDuplicates();
    }
}
