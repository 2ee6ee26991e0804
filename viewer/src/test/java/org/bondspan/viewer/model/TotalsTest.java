package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.Totals.Standing;
import org.bondspan.viewer.model.Totals.Total;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TotalsTest {
    /**
     * By hand from the sample's file. 3/0 AWG: from the service at (5, 6, 3) up 23 ft to 26 ft, north 374, east 590,
     * north 14, down 24 to the pipe, make-up 3 at the service and 3 at the pipe: 1,031 ft. 4 AWG: 13 in plan and 2 down
     * to the tap at (0, 14, 1), then 4 to the stub with 3 of make-up: 22 ft. 6 AWG: 3.5 down and 5 west, 3 at rod 1, 10
     * and 3 to rod 2: 24.5 ft. Weights by ASTM B8: 518.1, 128.9, 81.0 lb per 1,000 ft. Waste 5 %.
     */
    @Test
    void theTotalsOfTheTimberHallAreThoseWorkedByHand() {
        Totals totals = Totals.of(Sitting.solved("hall-timber.site.json"));

        assertThat(totals.verdict()).isEqualTo("Least copper, proven");
        assertThat(totals.standing()).isEqualTo(Standing.GOOD);
        assertThat(totals.totals())
                .containsExactly(
                        new Total("weight", "538.98 lb"),
                        new Total("length", "1,077.50 ft"),
                        new Total("to buy", "1,131.38 ft"),
                        new Total("3/0 AWG", "1,031.00 ft  534.16 lb"),
                        new Total("4 AWG", "22.00 ft  2.84 lb"),
                        new Total("6 AWG", "24.50 ft  1.98 lb"));
    }

    @Test
    void aMetricSiteIsAnsweredInMetresAndKilograms() {
        List<Total> totals =
                Totals.of(Sitting.solved("workshop-metric.site.json")).totals();

        assertThat(totals.get(0).amount()).endsWith(" kg");
        assertThat(totals.get(1).amount()).endsWith(" m");
    }

    /** The price book of demo figures gives the steel hall a cost; without it none is made up. */
    @Test
    void costStandsThereOnlyWhenPriced() {
        try (Sitting sitting = new Sitting()) {
            Desk desk = sitting.open("hall-steel.site.json");
            assertThat(Totals.of(desk).totals()).noneMatch(total -> total.name().equals("installed"));

            sitting.bench().price(desk.opened().orElseThrow(), Sitting.sample("demo.prices.json"));
            Totals priced = Totals.of(sitting.settle());
            assertThat(priced.totals())
                    .filteredOn(total -> total.name().equals("installed"))
                    .singleElement()
                    .satisfies(total -> assertThat(total.amount()).startsWith("$"));
        }
    }

    /** The faulty proposal has nine violations; its copper is 35.62 lb (README, "Reviewing a proposal"). */
    @Test
    void aProposalIsJudgedAndSetAgainstTheLeast() {
        Totals totals = Totals.of(Sitting.reviewed("hall-timber.site.json", "hall-timber.faulty.proposal.json"));

        assertThat(totals.verdict()).isEqualTo("Violates, 9 violations to mend");
        assertThat(totals.standing()).isEqualTo(Standing.BAD);
        // 538.98 less 35.62
        assertThat(totals.totals())
                .contains(
                        new Total("weight", "35.62 lb"),
                        new Total("least", "538.98 lb"),
                        new Total("against the least", "\u2212503.36 lb"));
    }

    /** The timber hall without its open floor: no drawn line leads to the water entry. */
    @Test
    void whatIsImpossibleHasNoTotals(@TempDir Path directory) throws IOException {
        Path closed = directory.resolve("closed.site.json");
        Files.writeString(
                closed,
                Files.readString(Sitting.sample("hall-timber.site.json")).replaceFirst("\"open\": \\{[^}]*},", ""));
        try (Sitting sitting = new Sitting()) {
            sitting.bench().open(closed);
            Totals totals = Totals.of(sitting.settle());

            assertThat(totals.verdict()).isEqualTo("Impossible as drawn, 1 violation to mend");
            assertThat(totals.standing()).isEqualTo(Standing.BAD);
            assertThat(totals.totals()).isEmpty();
        }
    }

    @Test
    void withoutASiteThereIsNothingToSay() {
        Desk empty = Desk.empty(Palette.LIGHT);

        assertThat(Totals.of(empty)).isEqualTo(new Totals("No site opened", Standing.OPEN, List.of()));
        assertThat(Totals.of(Asking.begin(1, "Reading").on(empty)).totals()).isEmpty();
    }
}
