package org.bondspan.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExactMoneyTest {
    static LongStream seeds() {
        return Seeds.upTo(100);
    }

    /** 13.2 ft at 1,024.50 per 1000 ft: 13.5234. */
    @Test
    void isExactUntilItIsRounded() {
        ExactMoney cost =
                ExactMoney.of(Money.ofCents(102_450), Length.ofFeet(12)).increasedBy(BigDecimal.TEN);
        assertThat(cost.rounded()).isEqualTo(Money.ofCents(1352));
        ExactMoney thrice = cost.plus(cost).plus(cost);
        assertThat(thrice.rounded()).isEqualTo(Money.ofCents(4057)); // 40.5702, not 3 x 13.52 = 40.56
    }

    @Test
    void halfACentIsRoundedAwayFromZero() {
        assertThat(ExactMoney.of(Money.ofCents(50), Length.ofFeet(10)).rounded())
                .isEqualTo(Money.ofCents(1));
        assertThat(Money.of(new BigDecimal("-0.005"))).isEqualTo(Money.ofCents(-1));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aLengthInPiecesCostsAsMuchAsInOne(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Length one = Length.ofNanometres(random.nextLong(1_000_000_000_000L));
        Length other = Length.ofNanometres(random.nextLong(1_000_000_000_000L));
        Money price = Money.ofCents(random.nextLong(1_000_000));
        BigDecimal waste = BigDecimal.valueOf(random.nextInt(10_000), 2);
        assertThat(ExactMoney.of(price, one)
                        .increasedBy(waste)
                        .plus(ExactMoney.of(price, other).increasedBy(waste)))
                .isEqualTo(ExactMoney.of(price, one.plus(other)).increasedBy(waste));
    }

    @Test
    void isPrintedAsMoneyOfItsCurrency() {
        assertThat(Numbers.print(Money.ofCents(123_450), "USD")).isEqualTo("$1,234.50");
        assertThat(Numbers.print(Money.ofCents(-5), "USD")).isEqualTo("-$0.05");
        assertThat(Numbers.print(Money.ofCents(123_450), "EUR")).isEqualTo("1,234.50 EUR");
    }
}
