package org.bondspan.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Copper;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.Status;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;

/** The copper of a proposal beside the least of its site, or beside the best found where that is not proven least. */
final class CopperComparison {
    private final ReviewOutcome outcome;
    private final LeastCopper least;
    private final LengthUnit unit;

    CopperComparison(ReviewOutcome outcome) {
        this.outcome = outcome;
        this.least = outcome.least();
        this.unit = outcome.lengthUnit();
    }

    String sentence() {
        return outcome.copper()
                .map(copper -> "It takes " + Numbers.print(copper.weight(), unit) + " of copper" + asNeeded()
                        + straight() + "; " + leastInWords() + "." + lighter(copper))
                .orElseGet(this::notKnown);
    }

    private String notKnown() {
        return "Its copper is not known: no length, no line and no ends tell how long "
                + String.join(", ", outcome.unknownLengths())
                + (outcome.unknownLengths().size() == 1 ? " is." : " are.");
    }

    private String leastInWords() {
        if (least.weight().isEmpty()) {
            return least.status().filter(Status.IMPOSSIBLE::equals).isPresent()
                    ? "the site as drawn has no lawful interconnection"
                    : "the least is not known, for the search ended before it found an interconnection";
        }
        String weight = Numbers.print(least.weight().get(), unit);
        return least.isOnlyBestFound()
                ? "best found " + weight + bound() + ", not proven least"
                : "the least is " + weight;
    }

    private String bound() {
        return least.lowerBound()
                .map(bound -> ", at least " + Numbers.print(bound, unit))
                .orElse("");
    }

    /** That a lawful proposal takes less is worth a word; with violations it is no wonder. */
    private String lighter(Copper copper) {
        BigDecimal less = least.weight()
                .filter(weight -> outcome.complies() && least.isOnlyBestFound())
                .map(weight -> Numbers.rounded(more(copper, weight)).negate())
                .orElse(BigDecimal.ZERO);
        return less.signum() <= 0
                ? ""
                : " That is " + weight(less) + " less than the best found"
                        + (outcome.reckonedStraight().isEmpty() ? "." : ", as far as told.");
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

    Table table() {
        Table table = new Table("copper", ">length", ">weight");
        outcome.copper()
                .ifPresent(copper -> table.add(
                        outcome.reckonedStraight().isEmpty() ? proposed() : proposed() + ", partly reckoned straight",
                        Numbers.print(copper.length(), unit),
                        Numbers.print(copper.weight(), unit)));
        least.weight()
                .ifPresent(weight -> table.add(
                        least.isOnlyBestFound() ? "best found, not proven least" : "least",
                        "",
                        Numbers.print(weight, unit)));
        least.lowerBound()
                .filter(bound -> least.isOnlyBestFound())
                .ifPresent(bound -> table.add("at least", "", Numbers.print(bound, unit)));
        difference().ifPresent(words -> table.add(differing(), "", words));
        return table;
    }

    /** How to read the table. */
    String remark() {
        if (least.weight().isEmpty()) {
            return "bare, as measured";
        }
        return least.isOnlyBestFound()
                ? "bare, as measured; the best found is at most " + Numbers.print(least.gapPercent())
                        + " % above the least possible"
                : "bare, as measured; the least is what route proves for this site";
    }

    private String proposed() {
        return outcome.reckonedAsNeeded().isEmpty() ? "proposed" : "proposed, not all as stated";
    }

    private String differing() {
        String difference = least.isOnlyBestFound() ? "difference from the best found" : "difference";
        return outcome.reckonedStraight().isEmpty() ? difference : difference + ", as far as told";
    }

    private Optional<String> difference() {
        if (outcome.copper().isEmpty() || least.weight().isEmpty()) {
            return Optional.empty();
        }
        Weight beside = least.weight().get();
        BigDecimal more = more(outcome.copper().get(), beside);
        return Optional.of(
                beside.isZero() ? weight(more) : weight(more) + " (" + percent(more, beside.in(unit)) + " %)");
    }

    private BigDecimal more(Copper copper, Weight than) {
        return copper.weight().in(unit).subtract(than.in(unit));
    }

    private String weight(BigDecimal amount) {
        return Numbers.print(amount) + " " + unit.weightSymbol();
    }

    private static String percent(BigDecimal part, BigDecimal whole) {
        return Numbers.print(part.movePointRight(2).divide(whole, MathContext.DECIMAL64));
    }
}
