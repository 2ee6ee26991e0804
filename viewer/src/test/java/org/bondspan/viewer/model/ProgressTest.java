package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Weight;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private final Desk working = Asking.begin(1, "Solving").on(Desk.empty(Palette.LIGHT));

    @Test
    void nothingIsSaidWhileNothingIsUnderWay() {
        assertThat(Progress.find(Desk.empty(Palette.LIGHT))).isEmpty();
        assertThat(Progress.find(working)).contains("Solving");
    }

    /** 103 over 100 is a gap of 3 %; 100.001 over 100 is rounded up, so that no gap is rounded away. */
    @Test
    void theGapIsHowFarTheBestMayBeAboveTheLeast() {
        assertThat(Progress.find(reached("103", "100")))
                .contains("Solving: best 103.00 lb, at least 100.00 lb, gap 3.00 %");
        assertThat(Progress.find(reached("100.001", "100")).orElseThrow()).endsWith("gap 0.01 %");
        assertThat(Progress.find(reached("100", "0")).orElseThrow()).doesNotContain("gap");
    }

    @Test
    void aSearchThatWasAskedToStopSaysSo() {
        assertThat(Progress.find(Asking.stopping().on(working))).contains("Solving, stopping");
    }

    private Desk reached(String best, String bound) {
        return Asking.reached(1, pounds(best), pounds(bound)).on(working);
    }

    private static Weight pounds(String amount) {
        return Weight.of(new BigDecimal(amount), LengthUnit.FOOT);
    }
}
