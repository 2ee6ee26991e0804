package org.bondspan.sheet;

import java.util.Optional;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** What an answer comes to, in a sentence or two: as drawings and reports are headed. */
public final class Verdict {
    private Verdict() {}

    /** Where there are violations it says how many, and where they are listed. */
    public static String of(Layout layout, String list) {
        long violations = Finding.countViolations(layout.findings());
        if (violations == 0) {
            return words(layout);
        }
        String toMend = Numbers.count(violations, "violation") + " to mend, see " + list + ".";
        return layout.status() == Status.IMPOSSIBLE
                ? words(layout) + " " + toMend
                : "Violates: " + toMend + " " + words(layout);
    }

    /** Why an answer that is best found is not proven least. */
    public static Optional<Finding> findUnproven(Layout layout) {
        return layout.findings().stream()
                .filter(finding ->
                        layout.status() == Status.BEST_FOUND && finding.rule().equals(Rule.PROOF.section()))
                .findFirst();
    }

    private static String words(Layout layout) {
        return switch (layout.status()) {
            case LEAST -> least(layout);
            case BEST_FOUND ->
                "Best found, not proven least: " + amounts(layout) + ", at most " + Numbers.print(layout.gapPercent())
                        + " % above the least."
                        + findUnproven(layout)
                                .map(finding -> " " + finding.message())
                                .orElse("");
            case IMPOSSIBLE -> "Impossible: the site as drawn gives no lawful way to all that must be connected.";
        };
    }

    /** Least of nothing is no achievement. */
    private static String least(Layout layout) {
        return layout.conductors().isEmpty()
                ? "No copper: nothing is drawn that a conductor would have to connect."
                : (layout.cost().isPresent() ? "Least cost" : "Least copper") + ", proven: " + amounts(layout) + ".";
    }

    private static String amounts(Layout layout) {
        LengthUnit unit = layout.lengthUnit();
        Copper copper = layout.copper().orElseThrow();
        String cost = layout.cost()
                .map(each -> Numbers.print(each.total(), each.currency()) + ", ")
                .orElse("");
        return cost + Numbers.print(copper.length(), unit) + ", " + Numbers.print(copper.weight(), unit);
    }
}
