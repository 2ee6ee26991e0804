package org.bondspan.network;

/** Which way a run goes, for counting bends: along x, y or the vertical, or along an oblique stretch of its own. */
final class Direction {
    /** No run: a landing or a place. */
    static final int NONE = 0;

    static final int X = 1;
    static final int Y = 2;
    static final int VERTICAL = 3;
    /** From here on, every oblique stretch has a number of its own. */
    static final int FIRST_OBLIQUE = 4;

    private Direction() {}
}
