package org.bondspan.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Copper;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.Status;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Material;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;

/** 1,000 ft of 6 AWG, 81.0 lb by ASTM B8, beside what a search for the least tells. */
class CopperComparisonTest {
    private static final Length LONG = Length.ofNanometres(1_000 * LengthUnit.FOOT.nanometres());
    private static final Finding VIOLATION = new Finding("250.66", Severity.VIOLATION, "C1", "C1 is too small");

    @Test
    void whatIsProvenLeastIsCalledSo() {
        assertThat(text(found(Status.LEAST, "80", "80", "0"), LengthFrom.STATED))
                .contains("It takes 81.00 lb of copper; the least is 80.00 lb. COPPER (")
                .contains("the least is what route proves for this site")
                .contains(" least 80.00 lb difference 1.00 lb (1.25 %)")
                .doesNotContain("best found", "at least");
    }

    @Test
    void whatIsNotProvenIsTheBestFoundWithItsBound() {
        assertThat(text(found(Status.BEST_FOUND, "80", "78.4", "2.05"), LengthFrom.STATED))
                .contains(
                        "It takes 81.00 lb of copper; best found 80.00 lb, at least 78.40 lb, not proven least. COPPER (")
                .contains("the best found is at most 2.05 % above the least possible")
                .contains(" best found, not proven least 80.00 lb at least 78.40 lb"
                        + " difference from the best found 1.00 lb (1.25 %)")
                .doesNotContain("the least is", "proves");
    }

    @Test
    void aProposalMayTakeLessThanTheBestFound() {
        LeastCopper least = found(Status.BEST_FOUND, "100", "80", "25");

        assertThat(text(least, LengthFrom.STATED))
                .contains("best found 100.00 lb, at least 80.00 lb, not proven least."
                        + " That is 19.00 lb less than the best found. COPPER (")
                .contains(" difference from the best found -19.00 lb (-19.00 %)");
        assertThat(text(least, LengthFrom.ENDS))
                .contains(" That is 19.00 lb less than the best found, as far as told. COPPER (")
                .contains(" difference from the best found, as far as told -19.00 lb (-19.00 %)");
    }

    @Test
    void thatAViolationSparesCopperIsNoWonder() {
        assertThat(text(found(Status.BEST_FOUND, "100", "80", "25"), LengthFrom.STATED, List.of(VIOLATION)))
                .contains("not proven least. FINDINGS ")
                .contains(" difference from the best found -19.00 lb (-19.00 %)")
                .doesNotContain("less than");
    }

    @Test
    void aDifferenceThatCannotBeReadIsNone() {
        assertThat(text(found(Status.BEST_FOUND, "81.004", "80", "1.26"), LengthFrom.STATED))
                .contains("not proven least. COPPER (");
    }

    @Test
    void whatIsImpossibleIsToldApartFromWhatIsNotKnown() {
        LeastCopper impossible =
                new LeastCopper(Optional.of(Status.IMPOSSIBLE), Optional.empty(), Optional.empty(), BigDecimal.ZERO);

        assertThat(text(impossible, LengthFrom.STATED))
                .contains("; the site as drawn has no lawful interconnection. COPPER (bare, as measured) ");
        assertThat(text(LeastCopper.NOT_KNOWN, LengthFrom.STATED))
                .contains("; the least is not known, for the search ended before it found an interconnection. COPPER (")
                .doesNotContain("difference", "no lawful");
    }

    private static LeastCopper found(Status status, String weight, String bound, String gap) {
        return new LeastCopper(Optional.of(status), pounds(weight), pounds(bound), new BigDecimal(gap));
    }

    private static Optional<Weight> pounds(String amount) {
        return Optional.of(Weight.of(new BigDecimal(amount), LengthUnit.FOOT));
    }

    /** Verdict and copper of the answer, each white space as one. */
    private static String text(LeastCopper least, LengthFrom from) {
        return text(least, from, List.of());
    }

    private static String text(LeastCopper least, LengthFrom from, List<Finding> findings) {
        ReviewOutcome outcome = new ReviewOutcome(
                findings.isEmpty(),
                findings,
                List.of(),
                Optional.of(new Copper(LONG, Weight.of(WireSize.AWG_6, LONG), LONG)),
                least,
                LengthUnit.FOOT,
                List.of(new JudgedConductor(
                        "C1", WireSize.AWG_6, Material.COPPER, Optional.empty(), "", Optional.of(LONG), from)),
                List.of(),
                List.of(),
                "Hall 3",
                "",
                CodeEdition.NEC_2020,
                List.of());
        return ReviewText.of(outcome)
                .replaceAll("(?s)CONDUCTORS.*?(?=COPPER)", "")
                .replaceAll("\\s+", " ");
    }
}
