package org.bondspan.io;

import java.util.regex.Pattern;

/**
 * One mistake of an input file.
 *
 * @param line counted from 1; 0 where the file as a whole is meant
 * @param field path of the field, e.g. {@code electrodes[2].rodLength}; empty where the file or its text is meant
 * @param message what is wrong
 * @param advice a way out
 */
public record Problem(String file, int line, String field, String message, String advice) {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    /**
     * {@code plan.site.json:14: electrodes[2].rodLength: is missing. Give the length of the rod in ft.} On one line.
     */
    @Override
    public String toString() {
        String place = file + (line > 0 ? ":" + line : "") + ": " + (field.isEmpty() ? "" : field + ": ");
        return CONTROL.matcher(place + message + ". " + advice + ".").replaceAll("?");
    }
}
