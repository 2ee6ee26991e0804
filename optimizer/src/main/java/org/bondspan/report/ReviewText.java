package org.bondspan.report;

import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** The answer of {@code review} as a plan reviewer reads it: verdict, findings, sizes, ways, copper. */
public final class ReviewText {
    private final ReviewOutcome outcome;
    private final LengthUnit unit;
    private final Page page;
    private final SharedSections shared;
    private final CopperComparison copper;

    private ReviewText(ReviewOutcome outcome, Ink ink) {
        this.outcome = outcome;
        this.unit = outcome.lengthUnit();
        this.page = new Page(ink);
        this.shared = new SharedSections(page);
        this.copper = new CopperComparison(outcome);
    }

    /** Plain text, ending in a line break. */
    public static String of(ReviewOutcome outcome) {
        return of(outcome, Ink.PLAIN);
    }

    public static String of(ReviewOutcome outcome, Ink ink) {
        return new ReviewText(outcome, ink).text();
    }

    private String text() {
        shared.title(outcome.site(), outcome.codeEdition(), outcome.adoption());
        verdict();
        shared.findings(outcome.findings());
        conductors();
        ways();
        page.table("Copper", copper.remark(), copper.table());
        shared.closing(outcome.assumed(), outcome.notChecked(), outcome.cautions());
        return page.text();
    }

    private void verdict() {
        page.line(0, "");
        if (outcome.complies()) {
            page.item(Tone.GOOD, "Complies.", "No finding is a violation. " + copper.sentence());
        } else {
            long violations = Finding.countViolations(outcome.findings());
            page.item(Tone.BAD, "Violates:", Numbers.count(violations, "violation") + " to mend. " + copper.sentence());
        }
    }

    private void conductors() {
        Table table = new Table("id", ">proposed", ">needed", ">length", "needed from");
        for (JudgedConductor conductor : outcome.conductors()) {
            table.add(
                    conductor.id(),
                    conductor.size().label() + " " + conductor.material().label(),
                    SharedSections.need(conductor.needed()),
                    length(conductor),
                    conductor.neededFor().isEmpty() ? "nothing relies on it alone" : conductor.neededFor());
        }
        page.table("Conductors", "lengths in " + unit.symbol(), table);
    }

    private String length(JudgedConductor conductor) {
        return conductor
                .length()
                .map(length -> prefix(conductor.lengthFrom()) + Numbers.print(length.in(unit)))
                .orElse("not known");
    }

    private static String prefix(LengthFrom from) {
        return switch (from) {
            case ENDS -> "straight ";
            case NEEDED -> "needed ";
            case STATED, LINE, NOTHING -> "";
        };
    }

    private void ways() {
        Table table = new Table("service", "to", "way", "thinnest stretch");
        for (JudgedWay way : outcome.ways()) {
            table.add(
                    List.of(way.service(), way.thing(), verdict(way), thinnest(way)),
                    way.passes().isEmpty() ? List.of() : List.of("by way of " + String.join(" > ", way.passes())));
        }
        page.table("Ways", "from each service to each thing that must be connected, at best", table);
    }

    private static String verdict(JudgedWay way) {
        if (way.lawful()) {
            return "lawful";
        }
        return way.passes().isEmpty() ? "none" : "not lawful";
    }

    private String thinnest(JudgedWay way) {
        Optional<JudgedConductor> thinnest = way.thinnest()
                .flatMap(id -> outcome.conductors().stream()
                        .filter(conductor -> conductor.id().equals(id))
                        .findFirst());
        return thinnest.map(conductor -> conductor.id() + ", "
                        + conductor.size().label() + " " + conductor.material().label())
                .orElse("-");
    }
}
