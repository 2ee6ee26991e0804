package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;

/**
 * All there is to say about one thing.
 *
 * @param title its id
 * @param subtitle what it is
 */
public record FactSheet(String title, String subtitle, List<Fact> facts) {
    public FactSheet {
        facts = List.copyOf(facts);
    }

    /** A name and what is so; the value may have several lines. */
    public record Fact(String name, String value) {}

    /** The heading and as many facts, in one line. */
    public String line(int count) {
        StringBuilder text = new StringBuilder(title + "  " + subtitle);
        facts.stream()
                .limit(count)
                .forEach(fact -> text.append("  \u00b7  ")
                        .append(fact.name())
                        .append(' ')
                        .append(fact.value().replace('\n', ';')));
        return text.toString();
    }

    /** As one text, for those who hear it. */
    public String spoken() {
        StringBuilder text = new StringBuilder(title + ", " + subtitle + ".");
        facts.forEach(fact -> text.append(' ')
                .append(fact.name())
                .append(": ")
                .append(fact.value().replace('\n', ';'))
                .append('.'));
        return text.toString();
    }

    /** Collects facts; those without a value are left out. */
    static final class Writer {
        private final String title;
        private final String subtitle;
        private final List<Fact> facts = new ArrayList<>();

        Writer(String title, String subtitle) {
            this.title = title;
            this.subtitle = subtitle;
        }

        Writer fact(String name, String value) {
            if (!value.isBlank()) {
                facts.add(new Fact(name, value));
            }
            return this;
        }

        FactSheet sheet() {
            return new FactSheet(title, subtitle, facts);
        }
    }
}
