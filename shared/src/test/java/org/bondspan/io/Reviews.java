package org.bondspan.io;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Copper;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.Status;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.site.Material;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/** Reviews made by hand. */
final class Reviews {
    private Reviews() {}

    /** 33 1/3 ft (10.16 m) of 6 AWG where 4 AWG is needed, with one of everything that a review can hold. */
    static ReviewOutcome ofEverything(LengthUnit unit) {
        Length third = Length.ofNanometres(LengthUnit.FOOT.nanometres() * 100 / 3);
        return new ReviewOutcome(
                false,
                List.of(
                        new Finding("250.66", Severity.VIOLATION, "C1", "C1 is 6 AWG, 4 AWG is needed"),
                        new Finding("length", Severity.CAUTION, "C2", "stated 3 ft, drawn 4 ft")),
                List.of("separately derived systems, 250.30"),
                Optional.of(new Copper(third, Weight.of(WireSize.AWG_6, third), third)),
                new LeastCopper(
                        Optional.of(Status.BEST_FOUND),
                        Optional.of(Weight.of(WireSize.AWG_4, third)),
                        Optional.of(Weight.of(WireSize.AWG_6, third)),
                        new BigDecimal("59.14")),
                unit,
                List.of(
                        new JudgedConductor(
                                "C1",
                                WireSize.AWG_6,
                                Material.COPPER,
                                Optional.of(WireSize.AWG_4),
                                "service S1 to E5",
                                Optional.of(third),
                                LengthFrom.STATED),
                        new JudgedConductor(
                                "C2",
                                WireSize.AWG_2,
                                Material.ALUMINUM,
                                Optional.empty(),
                                "",
                                Optional.empty(),
                                LengthFrom.NOTHING)),
                List.of(
                        new JudgedWay("S1", "E5", false, List.of("C1", "F1"), Optional.of("C1")),
                        new JudgedWay("S1", "E6", false, List.of(), Optional.empty())),
                List.of("A licensed professional reviews"),
                "Hall 3",
                "Example jurisdiction",
                CodeEdition.NEC_2020,
                List.of(new Evidence("E5", "assumed")));
    }

    /** No copper known, nothing known of the least, and nothing wrong. */
    static ReviewOutcome ofNothing() {
        return new ReviewOutcome(
                true,
                List.of(),
                List.of(),
                Optional.empty(),
                LeastCopper.NOT_KNOWN,
                LengthUnit.METRE,
                List.of(),
                List.of(),
                List.of(),
                "Hall 4",
                "",
                CodeEdition.NEC_2014,
                List.of());
    }
}
