package org.bondspan.viewer.model;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Objective;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.layout.SizeTotal;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;
import org.bondspan.viewer.state.Reviewed;

/**
 * What stands at the foot of the window at all times.
 *
 * @param verdict proven least, best found with its gap, impossible, or of a proposal whether it complies
 * @param standing how grave that is
 */
public record Totals(String verdict, Standing standing, List<Total> totals) {
    public Totals {
        totals = List.copyOf(totals);
    }

    /** One amount with its name. */
    public record Total(String name, String amount) {}

    /** Whether the verdict is good news. */
    public enum Standing {
        OPEN,
        GOOD,
        MIDDLING,
        BAD
    }

    public static Totals of(Desk desk) {
        return desk.proposal()
                .map(Totals::of)
                .or(() -> desk.answer().map(Totals::of))
                .orElseGet(() -> unanswered(desk));
    }

    static Totals unanswered(Desk desk) {
        String words =
                desk.opened().isEmpty() ? "No site opened" : desk.work().isPresent() ? "Being solved" : "Not solved";
        return new Totals(words, Standing.OPEN, List.of());
    }

    static Totals of(Answer answer) {
        Layout layout = answer.layout();
        List<Total> totals = new ArrayList<>();
        layout.copper().ifPresent(copper -> addCopper(copper, answer.plan(), totals));
        for (SizeTotal size : layout.sizes()) {
            totals.add(new Total(
                    size.size().label(),
                    Numbers.print(size.length(), layout.lengthUnit()) + "  "
                            + Numbers.print(size.weight(), layout.lengthUnit())));
        }
        return new Totals(verdict(layout), standing(layout), totals);
    }

    private static void addCopper(Copper copper, Plan plan, List<Total> totals) {
        Wording wording = Wording.of(plan.site());
        totals.add(new Total("weight", wording.of(copper.weight())));
        totals.add(new Total("length", wording.of(copper.length())));
        totals.add(new Total("to buy", wording.of(copper.purchaseLength())));
        plan.cost().ifPresent(cost -> totals.add(new Total("installed", Numbers.print(cost, plan.currency()))));
    }

    private static String verdict(Layout layout) {
        String what = layout.objective() == Objective.COST ? "cost" : "copper";
        String verdict = switch (layout.status()) {
            case LEAST -> "Least " + what + ", proven";
            case BEST_FOUND ->
                "Best found, at most " + Numbers.print(layout.gapPercent()) + " % above the least " + what;
            case IMPOSSIBLE -> "Impossible as drawn";
        };
        long violations = violations(layout.findings());
        return violations == 0 ? verdict : verdict + ", " + Wording.counted(violations, "violation") + " to mend";
    }

    private static Standing standing(Layout layout) {
        boolean violated = violations(layout.findings()) > 0;
        return switch (layout.status()) {
            case LEAST -> violated ? Standing.MIDDLING : Standing.GOOD;
            case BEST_FOUND -> Standing.MIDDLING;
            case IMPOSSIBLE -> Standing.BAD;
        };
    }

    /** The proven bound of the objective, in words; empty where there is no answer. */
    public static Optional<String> findBound(Layout layout) {
        Optional<String> cost = layout.cost().map(Totals::bound);
        return cost.or(() -> layout.lowerBound().map(bound -> Numbers.print(bound, layout.lengthUnit())));
    }

    private static String bound(Cost cost) {
        return Numbers.print(cost.lowerBound(), cost.currency());
    }

    /** {@code Least copper, proven: weight 538.98 lb, length 1,077.50 ft}. */
    String sentence() {
        return verdict
                + (totals.isEmpty() ? "" : ": ")
                + totals.stream()
                        .map(total -> total.name() + " " + total.amount())
                        .collect(Collectors.joining(", "));
    }

    /** Weight and length in one line. */
    static String line(Answer answer) {
        Wording wording = Wording.of(answer.plan().site());
        return answer.layout()
                .copper()
                .map(copper -> wording.of(copper.weight()) + ", " + wording.of(copper.length()))
                .orElse("impossible");
    }

    static Totals of(Reviewed review) {
        ReviewOutcome outcome = review.outcome();
        long violations = violations(outcome.findings());
        List<Total> totals = new ArrayList<>();
        outcome.copper().ifPresent(copper -> {
            totals.add(new Total("weight", Numbers.print(copper.weight(), outcome.lengthUnit())));
            totals.add(new Total("length", Numbers.print(copper.length(), outcome.lengthUnit())));
        });
        outcome.least().weight().ifPresent(least -> addLeast(least, outcome, totals));
        return new Totals(
                violations == 0 ? "Complies" : "Violates, " + Wording.counted(violations, "violation") + " to mend",
                violations == 0 ? Standing.GOOD : Standing.BAD,
                totals);
    }

    /** What is not proven least is not called so; its bound stands beside it. */
    private static void addLeast(Weight weight, ReviewOutcome outcome, List<Total> totals) {
        String name = outcome.least().isOnlyBestFound() ? "best found" : "least";
        totals.add(new Total(name, Numbers.print(weight, outcome.lengthUnit())));
        if (outcome.least().isOnlyBestFound()) {
            outcome.least()
                    .lowerBound()
                    .ifPresent(bound -> totals.add(new Total("at least", Numbers.print(bound, outcome.lengthUnit()))));
        }
        outcome.copper()
                .ifPresent(copper ->
                        totals.add(new Total("against the " + name, above(copper.weight(), weight, outcome))));
    }

    private static String above(Weight weight, Weight least, ReviewOutcome outcome) {
        BigDecimal difference = weight.in(outcome.lengthUnit()).subtract(least.in(outcome.lengthUnit()));
        return Wording.signed(difference, outcome.lengthUnit().weightSymbol());
    }

    private static long violations(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() == Severity.VIOLATION)
                .count();
    }
}
