package org.bondspan.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.ServiceState;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.Evidence;
import org.bondspan.units.WireSize;

/** The parts that the answers of {@code check} and {@code route} have in common. */
final class SharedSections {
    private final Page page;

    SharedSections(Page page) {
        this.page = page;
    }

    void title(String site, CodeEdition edition, String adoption) {
        page.line(0, Tone.TITLE, Page.printable(site));
        page.wrapped(2, edition.describe(adoption));
    }

    void services(List<ServiceState> services) {
        page.table("Services", Table.of(AnswerTables.services(services)));
    }

    void excluded(List<Excluded> excluded) {
        Table table = new Table("path", "medium", "rule");
        for (Excluded path : excluded) {
            table.add(
                    List.of(path.path(), words(path.medium()), String.join(", ", path.basis())),
                    List.of(path.reason()));
        }
        page.table("May not carry", table);
    }

    /** Violations first, then cautions, then notes. */
    void findings(List<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        page.heading("Findings");
        findings.stream()
                .sorted(Comparator.comparing(Finding::severity))
                .forEach(finding -> page.item(
                        tone(finding.severity()),
                        finding.severity().label().toUpperCase(Locale.ROOT) + " " + finding.rule(),
                        finding.subject() + ": " + finding.message()));
    }

    void closing(List<Evidence> assumed, List<String> notChecked, List<String> cautions) {
        if (!assumed.isEmpty()) {
            List<String> things = assumed.stream().map(Evidence::of).toList();
            page.list("Assumed, not verified", List.of(String.join(", ", things)));
        }
        page.list("Not checked", notChecked);
        page.list("Cautions", cautions);
    }

    static String need(Optional<WireSize> need) {
        return need.map(WireSize::label).orElse("-");
    }

    /** {@code structural-frame} as people write it. */
    static String words(String label) {
        return label.replace('-', ' ');
    }

    private static Tone tone(Severity severity) {
        return switch (severity) {
            case VIOLATION -> Tone.BAD;
            case CAUTION -> Tone.WARNING;
            case NOTE -> Tone.QUIET;
        };
    }
}
