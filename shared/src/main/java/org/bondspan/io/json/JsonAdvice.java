package org.bondspan.io.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** A way out of a syntax error, by what is usually wrong with such a line. */
final class JsonAdvice {
    private static final String OTHERWISE =
            "Check commas, quotes and brackets there: \"name\": value, the members of an object parted by commas";

    private static final Map<Pattern, String> ADVICE = advice();

    private JsonAdvice() {}

    private static Map<Pattern, String> advice() {
        Map<Pattern, String> advice = new LinkedHashMap<>();
        advice.put(Pattern.compile("\\b(NaN|Infinity)\\b"), "Write a number: JSON has no NaN and no Infinity");
        advice.put(Pattern.compile("(^|[^:\"])//|/\\*|^#"), "Remove the comment: JSON has none; use the field note");
        advice.put(Pattern.compile("'"), "Put names and texts in double quotes");
        advice.put(Pattern.compile(",\\s*[]}]"), "Remove the comma before the closing bracket");
        advice.put(Pattern.compile("[:\\[,]\\s*[+.]?0?\\d"), "Check commas, and numbers: 0.5, not .5, +0.5 or 00.5");
        return advice;
    }

    static String on(String line) {
        return ADVICE.entrySet().stream()
                .filter(entry -> entry.getKey().matcher(line).find())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(OTHERWISE);
    }
}
