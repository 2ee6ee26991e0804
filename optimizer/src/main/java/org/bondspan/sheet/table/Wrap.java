package org.bondspan.sheet.table;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.plan.Typeface;

/** Breaks words into lines. */
public final class Wrap {
    private Wrap() {}

    /** Lines no wider than that, at least one; a word that is wider alone is broken. */
    public static List<String> lines(String words, double size, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (Typeface.width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (Typeface.width(line, size) > width && line.length() > 1) {
                int end = fitting(line, size, width);
                lines.add(line.substring(0, end));
                line = line.substring(end);
            }
        }
        lines.add(line);
        return lines;
    }

    /** The same, cut after that many lines with three dots. */
    public static List<String> lines(String words, double size, double width, int most) {
        List<String> all = lines(words, size, width);
        if (all.size() <= most) {
            return all;
        }
        List<String> kept = new ArrayList<>(all.subList(0, most));
        kept.set(most - 1, Typeface.cut(all.get(most - 1), size, width));
        return kept;
    }

    private static int fitting(String word, double size, double width) {
        int end = 1;
        while (end + 1 < word.length() && Typeface.width(word.substring(0, end + 1), size) <= width) {
            end++;
        }
        return end;
    }
}
