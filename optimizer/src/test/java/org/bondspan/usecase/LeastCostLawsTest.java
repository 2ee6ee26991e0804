package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.stream.LongStream;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Status;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold between least costs of random sites. */
class LeastCostLawsTest {
    private static final String NO_CROSSING = "\"crossing\": 0}";

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 60) : LongStream.of(only);
    }

    private static String site(long seed) {
        return new RandomPlant(seed).site();
    }

    private static String book(long seed, int times) {
        return new RandomPlant(seed + 1_000).book(times);
    }

    /** The cost is that of the rows of the take-off, and no more than the least copper costs. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void isProvenAndComplies(long seed) {
        Priced priced = Priced.of(site(seed), book(seed, 1));
        assertThat(priced.layout().status()).as("seed %d", seed).isEqualTo(Status.LEAST);
        assertThat(priced.total())
                .isEqualByComparingTo(priced.cost().lowerBound().amount());
        assertThat(priced.total()).isLessThanOrEqualTo(priced.ofLeastCopper());
        assertThat(priced.takenOff()).isEqualByComparingTo(priced.total());
        assertThat(priced.review().findings().stream().filter(finding -> finding.severity() == Severity.VIOLATION))
                .allMatch(finding -> priced.layout().findings().contains(finding));
    }

    /**
     * Where height turns the order of the prices of two sizes, the search may think of two sizes along one conductor:
     * then the answer is not proven, and says how much it may be above the least.
     */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whereHeightCountsTheGapIsTold(long seed) {
        Priced priced = Priced.of(site(seed), new RandomPlant(seed + 1_000).bookWithHeights());
        boolean proven = priced.layout().status() == Status.LEAST;
        assertThat(proven).isEqualTo(priced.layout().gapPercent().signum() == 0);
        assertThat(priced.cost().lowerBound()).isLessThanOrEqualTo(priced.cost().total());
        assertThat(priced.total()).isLessThanOrEqualTo(priced.ofLeastCopper());
        assertThat(priced.takenOff()).isEqualByComparingTo(priced.total());
        assertThat(priced.layout().gapPercent()).isLessThan(BigDecimal.ONE);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void threefoldPricesMakeThreefoldCost(long seed) {
        String site = site(seed).replaceAll("\"crossing\": \\d+}", NO_CROSSING);
        BigDecimal once = Priced.of(site, book(seed, 1)).total();
        BigDecimal thrice = Priced.of(site, book(seed, 3)).total();
        // each is rounded to the cent once
        assertThat(thrice.subtract(once.multiply(BigDecimal.valueOf(3))).abs())
                .isLessThanOrEqualTo(new BigDecimal("0.02"));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aHigherPriceNeverLowersTheCost(long seed) {
        String book = book(seed, 1);
        BigDecimal before = Priced.of(site(seed), book).total();
        for (String[] dearer : new String[][] {
            {"\"perHour\": ", "\"perHour\": 1"},
            {"\"service-lug\": {\"price\": ", "\"service-lug\": {\"price\": 1"},
            {"\"exothermic-tap\": {\"price\": ", "\"exothermic-tap\": {\"price\": 1"},
            {"\"6 AWG\", \"per1000ft\": ", "\"6 AWG\", \"per1000ft\": 1"},
            {"\"raceway\": {\"per1000ft\": ", "\"raceway\": {\"per1000ft\": 1"}
        }) {
            assertThat(book).contains(dearer[0]);
            assertThat(Priced.of(site(seed), book.replace(dearer[0], dearer[1])).total())
                    .as(dearer[0])
                    .isGreaterThanOrEqualTo(before);
        }
        String walled = site(seed).replaceAll("\"crossing\": (\\d+)}", "\"crossing\": 9$1}");
        assertThat(Priced.of(walled, book).total()).isGreaterThanOrEqualTo(before);
    }

    /** At 1.00 per lb and nothing else the least cost is the least copper. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whereOnlyCopperCostsTheLeastCostIsTheLeastCopper(long seed) {
        String site = site(seed).replaceAll("\"crossing\": \\d+}", NO_CROSSING);
        String nothing = "{\"price\": 0, \"hours\": 0}";
        String hours = "\"hours\": {\"exposed\": 0, \"raceway\": 0, \"buried\": 0}";
        Priced priced = Priced.of(site, """
                {"format": "bondspan-prices/1", "labor": {"perHour": 0},
                 "copper": {"perPound": 1, "ratio": 1, "date": "2025-01-01"},
                 "conductors": [{"size": "8 AWG", $h}, {"size": "6 AWG", $h}, {"size": "4 AWG", $h},
                   {"size": "2 AWG", $h}, {"size": "1/0 AWG", $h}],
                 "raceway": {"per1000ft": 0, "hours": 0},
                 "connections": {"service-lug": $n, "rod-clamp": $n, "pipe-clamp": $n, "frame-weld": $n,
                   "exothermic-tap": $n}}""".replace("$h", hours).replace("$n", nothing));
        assertThat(priced.routed().weight())
                .isEqualByComparingTo(Routed.of(site).weight());
    }
}
