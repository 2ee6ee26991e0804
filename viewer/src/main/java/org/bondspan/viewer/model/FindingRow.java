package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.viewer.state.Desk;

/**
 * A finding as the list shows it.
 *
 * @param number of its keynote on the plan
 */
public record FindingRow(int number, Severity severity, String rule, String subject, String message) {

    /** Violations first, then cautions, then notes; numbers as on the plan. */
    public static List<FindingRow> rows(Desk desk) {
        List<Finding> findings = findings(desk);
        List<FindingRow> rows = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            rows.add(new FindingRow(i + 1, finding.severity(), finding.rule(), finding.subject(), finding.message()));
        }
        rows.sort(Comparator.comparing(FindingRow::severity));
        return List.copyOf(rows);
    }

    static List<Finding> findings(Desk desk) {
        return desk.proposal()
                .map(review -> review.outcome().findings())
                .or(() -> desk.plan().map(plan -> plan.states().findings()))
                .orElse(List.of());
    }
}
