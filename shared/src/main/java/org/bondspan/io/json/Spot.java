package org.bondspan.io.json;

import java.util.Comparator;

/** Where a value begins in its file; lines and columns count from 1. */
public record Spot(int line, int column) implements Comparable<Spot> {
    private static final Comparator<Spot> ORDER =
            Comparator.comparingInt(Spot::line).thenComparingInt(Spot::column);

    /** The beginning of the file. */
    public static final Spot START = new Spot(1, 1);

    @Override
    public int compareTo(Spot other) {
        return ORDER.compare(this, other);
    }
}
