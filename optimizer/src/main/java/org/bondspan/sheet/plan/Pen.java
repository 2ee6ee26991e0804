package org.bondspan.sheet.plan;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width in points on paper
 * @param dash lengths of dashes and gaps in points; empty for an unbroken line
 * @param letter set into the line at intervals, as drawings mark piping; may be empty
 * @param crossed crosses stand on the line: it may not carry
 */
public record Pen(Tint tint, double width, List<Float> dash, String letter, Crosses crossed) {
    public Pen {
        dash = List.copyOf(dash);
    }

    /** Whether crosses stand on a line. */
    public enum Crosses {
        NONE,
        ALONG_THE_LINE
    }

    /** How many times their width lines have beside letters of that size: thinner on small sheets, never thicker. */
    public static double scale(double letters) {
        return Math.min(1, letters / 8);
    }

    static Pen plain(Tint tint, double width, Float... dash) {
        return new Pen(tint, width, List.of(dash), "", Crosses.NONE);
    }

    static Pen lettered(Tint tint, double width, String letter, Float... dash) {
        return new Pen(tint, width, List.of(dash), letter, Crosses.NONE);
    }

    static Pen crossed(double width, String letter, Float... dash) {
        return new Pen(Tint.NOT_PERMITTED, width, List.of(dash), letter, Crosses.ALONG_THE_LINE);
    }
}
