package org.bondspan.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;

/** The answer of {@code review} as a plan reviewer reads it: verdict, findings, sizes, ways, copper. */
public final class ReviewText {
    private final ReviewOutcome outcome;
    private final LengthUnit unit;
    private final Page page;
    private final SharedSections shared;

    private ReviewText(ReviewOutcome outcome, Ink ink) {
        this.outcome = outcome;
        this.unit = outcome.lengthUnit();
        this.page = new Page(ink);
        this.shared = new SharedSections(page);
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
        copper();
        shared.closing(outcome.assumed(), outcome.notChecked(), outcome.cautions());
        return page.text();
    }

    private void verdict() {
        page.line(0, "");
        if (outcome.complies()) {
            page.item(Tone.GOOD, "Complies.", "No finding is a violation. " + comparison());
        } else {
            long violations = Finding.countViolations(outcome.findings());
            page.item(Tone.BAD, "Violates:", Numbers.count(violations, "violation") + " to mend. " + comparison());
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

    private void copper() {
        Table table = new Table("copper", ">length", ">weight");
        outcome.copper()
                .ifPresent(copper -> table.add(
                        outcome.reckonedStraight().isEmpty() ? proposed() : proposed() + ", partly reckoned straight",
                        Numbers.print(copper.length(), unit),
                        Numbers.print(copper.weight(), unit)));
        outcome.least().ifPresent(least -> table.add("least", "", Numbers.print(least, unit)));
        difference()
                .ifPresent(words -> table.add(
                        outcome.reckonedStraight().isEmpty() ? "difference" : "difference, as far as told", "", words));
        page.table("Copper", "bare, as measured; the least is what route proves for this site", table);
    }

    private String proposed() {
        return outcome.reckonedAsNeeded().isEmpty() ? "proposed" : "proposed, not all as stated";
    }

    /** How the copper stands to the least, in a sentence. */
    private String comparison() {
        if (outcome.copper().isEmpty()) {
            return "Its copper is not known: no length, no line and no ends tell how long "
                    + String.join(", ", outcome.unknownLengths())
                    + (outcome.unknownLengths().size() == 1 ? " is." : " are.");
        }
        String weight = Numbers.print(outcome.copper().get().weight(), unit) + " of copper" + asNeeded() + straight();
        return outcome.least()
                .map(least -> "It takes " + weight + "; the least is " + Numbers.print(least, unit) + ".")
                .orElse("It takes " + weight + "; the site as drawn has no lawful interconnection.");
    }

    /** What is reckoned longer than it is stated, in words. */
    private String asNeeded() {
        List<String> longer = outcome.reckonedAsNeeded();
        if (longer.isEmpty()) {
            return "";
        }
        String whose = longer.size() == 1 ? "its line or ends need" : "their lines or ends need";
        return ", " + Numbers.count(longer.size(), "conductor") + " reckoned as long as " + whose
                + ", which is more than stated";
    }

    /** What is reckoned shorter than it may be run, in words; empty where every length is stated or drawn. */
    private String straight() {
        List<String> straight = outcome.reckonedStraight();
        if (straight.isEmpty()) {
            return "";
        }
        String conductors = Numbers.count(straight.size(), "conductor");
        return ", " + conductors + " reckoned straight from end to end for want of a length or line"
                + " (run otherwise it takes more)";
    }

    private Optional<String> difference() {
        if (outcome.copper().isEmpty() || outcome.least().isEmpty()) {
            return Optional.empty();
        }
        BigDecimal proposed = outcome.copper().get().weight().in(unit);
        Weight least = outcome.least().get();
        BigDecimal more = proposed.subtract(least.in(unit));
        String words = Numbers.print(more) + " " + unit.weightSymbol();
        return Optional.of(least.isZero() ? words : words + " (" + percent(more, least.in(unit)) + " %)");
    }

    private static String percent(BigDecimal part, BigDecimal whole) {
        return Numbers.print(part.movePointRight(2).divide(whole, MathContext.DECIMAL64));
    }
}
