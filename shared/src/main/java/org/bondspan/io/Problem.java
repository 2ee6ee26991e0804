package org.bondspan.io;

/**
 * One mistake of an input file.
 *
 * @param line counted from 1; 0 where the file as a whole is meant
 * @param field path of the field, e.g. {@code electrodes[2].rodLength}; empty where the file or its text is meant
 * @param message what is wrong
 * @param advice a way out
 */
public record Problem(String file, int line, String field, String message, String advice) {
    /** {@code plan.site.json:14: electrodes[2].rodLength: is missing. Give the length of the rod in ft.} */
    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + ": " + (field.isEmpty() ? "" : field + ": ") + message + ". "
                + advice + ".";
    }
}
