package org.bondspan.sheet.table;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as data: a title, headings, rows of words. A heading that starts with {@code >} aligns its column to the
 * right, one that starts with {@code ~} takes the width that is left and is wrapped.
 */
public record Schedule(String title, List<String> headings, List<List<String>> rows) {
    public Schedule {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException(row + " does not fit the columns " + headings);
            }
        }
    }

    /** Words of a heading. */
    public static String words(String heading) {
        return heading.startsWith(">") || heading.startsWith("~") ? heading.substring(1) : heading;
    }

    public static boolean isRight(String heading) {
        return heading.startsWith(">");
    }

    public static boolean isWide(String heading) {
        return heading.startsWith("~");
    }

    /** The words of one column, heading first. */
    List<String> column(int index) {
        List<String> words = new ArrayList<>();
        words.add(words(headings.get(index)));
        rows.forEach(row -> words.add(row.get(index)));
        return words;
    }
}
