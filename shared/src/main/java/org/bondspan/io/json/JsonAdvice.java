package org.bondspan.io.json;

import java.util.List;
import java.util.regex.Pattern;

/** A way out of a syntax error, by what stands there. */
final class JsonAdvice {
    private record Case(Pattern pattern, String advice) {}

    private static final List<Case> CASES = List.of(
            new Case(Pattern.compile("NaN|Infinity"), "Write a number: JSON has no NaN and no Infinity"),
            new Case(Pattern.compile("//|/\\*|#"), "Remove the comment: JSON has none; use the field note"),
            new Case(Pattern.compile("'"), "Put names and texts in double quotes"),
            new Case(Pattern.compile(", ?[]}]"), "Remove the comma before the closing bracket"),
            new Case(Pattern.compile("[:\\[,] ?([+.]|-?0\\d)"), "Write numbers like 0.5, not .5, +0.5 or 00.5"));

    private static final String OTHERWISE =
            "Check commas, quotes and brackets there: \"name\": value, the members of an object parted by commas";

    private JsonAdvice() {}

    /** What a reader of the text sees at the place where it went wrong, on one line. */
    static String excerpt(String text, int offset) {
        return around(text, offset, 30, 20).strip();
    }

    static String at(String text, int offset) {
        String near = around(text, offset, 10, 2);
        return CASES.stream()
                .filter(each -> each.pattern().matcher(near).find())
                .map(Case::advice)
                .findFirst()
                .orElse(OTHERWISE);
    }

    private static String around(String text, int offset, int before, int after) {
        int at = Math.max(0, Math.min(offset, text.length()));
        String left = text.substring(Math.max(0, at - 200), at).replaceAll("\\s+", " ");
        String right = text.substring(at, Math.min(text.length(), at + after)).replaceAll("\\s+", " ");
        return left.substring(Math.max(0, left.length() - before)) + right;
    }
}
