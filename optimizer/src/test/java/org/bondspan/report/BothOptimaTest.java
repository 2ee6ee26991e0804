package org.bondspan.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.bondspan.io.PriceReader;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.bondspan.usecase.RouteLimits;
import org.bondspan.usecase.RouteSite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BothOptimaTest {
    private static final Path SAMPLES = Path.of("..", "samples");

    private static Layout kiosk() {
        Site site = SiteReader.read(SAMPLES.resolve("kiosk.site.json"))
                .withPrices(PriceReader.read(SAMPLES.resolve("demo.prices.json")));
        return RouteSite.leastCost(site, RouteLimits.none());
    }

    /** The amounts are those of the README, which is compared with the program elsewhere. */
    @Test
    void whatIsProvenIsLeast() {
        Layout layout = kiosk();
        assertThat(new BothOptima(layout, layout.cost().orElseThrow()).rows())
                .containsExactly(
                        List.of("least cost", "6.40 lb", "$302.41"), List.of("least copper", "4.03 lb", "$636.78"));
    }

    @ParameterizedTest
    @CsvSource({
        "LEAST, LEAST, Least cost and least copper",
        "LEAST, BEST_FOUND, Least cost and best found for copper",
        "BEST_FOUND, LEAST, Best found for cost and least copper",
        "BEST_FOUND, BEST_FOUND, Best found for cost and best found for copper",
    })
    void eachOfTheTwoHasItsOwnProof(Status ofCost, Status ofCopper, String heading) {
        Layout layout = kiosk();
        Cost known = layout.cost().orElseThrow();
        Cost cost = new Cost(
                known.currency(),
                known.total(),
                known.material(),
                known.labor(),
                known.crossings(),
                known.rounding(),
                known.lowerBound(),
                known.leastCopper(),
                known.leastCopperCost(),
                ofCopper);
        BothOptima both = new BothOptima(layout.withCost(ofCost, BigDecimal.ONE, cost, layout.findings()), cost);
        assertThat(both.heading()).isEqualTo(heading);
        assertThat(both.rows())
                .extracting(row -> row.get(0))
                .allSatisfy(name -> assertThat(heading).containsIgnoringCase(name));
    }
}
