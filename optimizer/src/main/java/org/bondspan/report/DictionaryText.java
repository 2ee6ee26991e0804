package org.bondspan.report;

import org.bondspan.review.CheckedRule;

/** The dictionary of checks: what {@code review} asks of a route. */
public final class DictionaryText {
    private DictionaryText() {}

    /** As a table for people, ending in a line break. */
    public static String plain() {
        Page page = new Page(Ink.PLAIN);
        Table table = new Table("rule", "at worst", "asks that");
        for (CheckedRule check : CheckedRule.values()) {
            table.add(check.rule().section(), check.gravest().label(), check.asks());
        }
        table.writeTo(page, 0);
        return page.text();
    }

    /** As a table in Markdown, ending in a line break. */
    public static String markdown() {
        StringBuilder text = new StringBuilder("| rule | at worst | asks that |\n|---|---|---|\n");
        for (CheckedRule check : CheckedRule.values()) {
            text.append("| ")
                    .append(check.rule().section())
                    .append(" | ")
                    .append(check.gravest().label())
                    .append(" | ")
                    .append(check.asks())
                    .append(" |\n");
        }
        return text.toString();
    }
}
