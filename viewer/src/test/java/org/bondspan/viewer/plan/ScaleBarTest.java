package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.LengthUnit;
import org.bondspan.viewer.Seeds;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ScaleBarTest {
    private static LongStream seeds() {
        return Seeds.seeds();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void isARoundLengthThatFitsAndIsTrueToScale(long seed) {
        Random random = new Random(seed);
        double metres = Math.exp(8 * random.nextDouble() - 1);
        PlanView view = new Camera(0, 0, metres * Drawn.METRE, metres * Drawn.METRE).view(700, 900);
        for (LengthUnit unit : LengthUnit.values()) {
            ScaleBar bar = ScaleBar.of(view, unit);
            assertThat(bar.pixels()).isGreaterThan(63).isLessThanOrEqualTo(160);
            assertThat(bar.words()).endsWith(" " + unit.symbol());
            BigDecimal length =
                    new BigDecimal(bar.words().substring(0, bar.words().indexOf(' ')));
            assertThat(length.stripTrailingZeros().unscaledValue().intValueExact())
                    .isIn(Set.of(1, 2, 5));
            PlanPoint end = new PlanPoint(Math.round(length.doubleValue() * unit.nanometres()), 0);
            assertThat(view.of(end).distance(view.of(new PlanPoint(0, 0)))).isCloseTo(bar.pixels(), within(1e-6));
        }
    }
}
