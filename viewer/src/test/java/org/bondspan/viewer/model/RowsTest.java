package org.bondspan.viewer.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.finding.Severity;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.state.Desk;
import org.junit.jupiter.api.Test;

class RowsTest {
    /** Lengths as in {@code TotalsTest}; weights by ASTM B8. */
    @Test
    void theConductorScheduleListsWhatTheAnswerHas() {
        List<ConductorRow> rows = ConductorRow.rows(Sitting.solved("hall-timber.site.json"));

        assertThat(rows)
                .contains(
                        new ConductorRow(
                                "C2",
                                "3/0 AWG",
                                "BJ",
                                "1,028.00 ft",
                                "532.61 lb",
                                "joint J1",
                                "water-main, 5.00 ft along"),
                        new ConductorRow("C6", "6 AWG", "BJ", "3.00 ft", "0.24 lb", "joint J3", "rod-1"));
        assertThat(rows).extracting(ConductorRow::id).containsExactly("C1", "C2", "C3", "C4", "C5", "C6", "C7");
    }

    /** The faults and their sections: README, "Reviewing a proposal", and the file itself. */
    @Test
    void findingsOfAFaultyProposalStandViolationsFirstWithTheNumbersOfThePlan() {
        Desk desk = Sitting.reviewed("hall-timber.site.json", "hall-timber.faulty.proposal.json");
        List<FindingRow> rows = FindingRow.rows(desk);

        assertThat(rows).hasSize(10);
        assertThat(rows.subList(0, 9)).allMatch(row -> row.severity() == Severity.VIOLATION);
        assertThat(rows.get(9).severity()).isEqualTo(Severity.CAUTION);
        assertThat(rows).extracting(FindingRow::number).containsExactlyInAnyOrder(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
        assertThat(rows)
                .anyMatch(row -> row.rule().equals("250.53(C)") && row.subject().equals("perimeter-footing"))
                .anyMatch(row -> row.rule().equals("250.64(C)"));
        assertThat(ConductorRow.rows(desk))
                .extracting(ConductorRow::id)
                .containsExactly("near", "far-1", "far-2", "rod-feed", "rod-tail");
        assertThat(ConductorRow.rows(desk).get(0).size()).isEqualTo("250 kcmil Al");
    }

    /** The sound proposal complies (README, "Reviewing a proposal"): every pair has its lawful way. */
    @Test
    void ofAProposalItIsToldWhetherEachThingIsConnected() {
        List<ThingRow> sound =
                ThingRow.rows(Sitting.reviewed("hall-timber.site.json", "hall-timber.sound.proposal.json"));
        assertThat(sound).isNotEmpty().allMatch(row -> row.state().equals("lawful way"));

        List<ThingRow> faulty =
                ThingRow.rows(Sitting.reviewed("hall-timber.site.json", "hall-timber.faulty.proposal.json"));
        assertThat(faulty)
                .anyMatch(row -> row.id().equals("water") && row.state().equals("no lawful way"));
    }

    @Test
    void metalThatCarriesStandsBeforeMetalThatMayNot() {
        List<MetalRow> rows = MetalRow.rows(Sitting.solved("hall-steel.site.json"));

        assertThat(rows.get(0).path()).isEqualTo("hall-frame");
        assertThat(rows.get(0).verdict().words()).isEqualTo("carries");
        assertThat(rows)
                .filteredOn(row -> row.verdict() == MetalRow.Verdict.MAY_NOT_CARRY)
                .extracting(MetalRow::path)
                .contains("deck");
    }

    @Test
    void whatMustBeConnectedIsListedWithItsFate() {
        List<ThingRow> rows = ThingRow.rows(Sitting.solved("hall-timber.site.json"));

        assertThat(rows)
                .contains(
                        new ThingRow("service", "service", "", "3/0 AWG"),
                        new ThingRow("water", "water pipe", "bonded", "3/0 AWG"),
                        new ThingRow("rod-1", "rod", "bonded", "6 AWG"));
    }
}
