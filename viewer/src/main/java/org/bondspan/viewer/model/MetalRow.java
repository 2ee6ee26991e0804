package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.Excluded;
import org.bondspan.layout.Link;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;

/**
 * Metal that carries without new copper, or that may not carry.
 *
 * @param verdict {@code carries} or {@code may not carry}
 * @param why between what it carries, or why it may not
 */
public record MetalRow(String path, String medium, Verdict verdict, String why, String sections) {

    /** Whether it carries. */
    public enum Verdict {
        CARRIES("carries"),
        MAY_NOT_CARRY("may not carry");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What carries first. */
    public static List<MetalRow> rows(Desk desk) {
        return desk.plan().map(MetalRow::of).orElse(List.of());
    }

    private static List<MetalRow> of(Plan plan) {
        Wording wording = Wording.of(plan.site());
        List<MetalRow> rows = new ArrayList<>();
        for (Link link : plan.links()) {
            rows.add(new MetalRow(
                    link.path(),
                    Wording.spaced(link.medium()),
                    Verdict.CARRIES,
                    wording.between(link),
                    String.join(", ", link.basis())));
        }
        for (Excluded excluded : plan.states().excluded()) {
            rows.add(new MetalRow(
                    excluded.path(),
                    Wording.spaced(excluded.medium()),
                    Verdict.MAY_NOT_CARRY,
                    excluded.reason(),
                    String.join(", ", excluded.basis())));
        }
        return List.copyOf(rows);
    }
}
