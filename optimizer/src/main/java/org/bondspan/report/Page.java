package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Text being written, wrapped at 100 columns where words allow it. Control characters of the site file, escape
 * sequences for terminals among them, become {@code ?}.
 */
final class Page {
    private static final int WIDTH = 100;
    private static final int INDENT = 2;
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}\\u0080-\\u009f\\p{Cf}]");
    private static final Pattern SPACE = Pattern.compile("\\s+");

    private final Ink ink;
    private final StringBuilder text = new StringBuilder();

    Page(Ink ink) {
        this.ink = ink;
    }

    /** On one line, without control characters. */
    static String printable(String words) {
        return CONTROL.matcher(SPACE.matcher(words.strip()).replaceAll(" ")).replaceAll("?");
    }

    void heading(String words) {
        text.append('\n');
        line(0, Tone.TITLE, words.toUpperCase(Locale.ROOT));
    }

    /** A line of our own words and padded cells, not wrapped. */
    void line(int indent, String words) {
        text.append(" ".repeat(indent)).append(words).append('\n');
    }

    void line(int indent, Tone tone, String words) {
        line(indent, ink.paint(tone, words));
    }

    /** Wrapped; an empty text leaves no line. */
    void wrapped(int indent, String words) {
        lines(printable(words), WIDTH - indent).forEach(part -> line(indent, part));
    }

    /** Wrapped, the first words in a tone. */
    void item(Tone tone, String lead, String words) {
        List<String> parts = lines(printable(lead + " " + words), WIDTH - INDENT);
        String first = parts.get(0);
        int painted = Math.min(printable(lead).length(), first.length());
        line(INDENT, ink.paint(tone, first.substring(0, painted)) + first.substring(painted));
        parts.stream().skip(1).forEach(part -> line(INDENT, part));
    }

    void list(String heading, List<String> items) {
        if (!items.isEmpty()) {
            heading(heading);
            items.forEach(item -> wrapped(INDENT, item));
        }
    }

    void table(String heading, Table table) {
        table(heading, "", table);
    }

    /** The remark says how to read the table. A table without rows leaves nothing. */
    void table(String heading, String remark, Table table) {
        if (!table.isEmpty()) {
            text.append('\n').append(ink.paint(Tone.TITLE, heading.toUpperCase(Locale.ROOT)));
            line(0, remark.isEmpty() ? "" : " (" + remark + ")");
            table.writeTo(this, INDENT);
        }
    }

    private static List<String> lines(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines;
    }

    /** All that was written, ending in a line break. */
    String text() {
        return text.toString();
    }
}
