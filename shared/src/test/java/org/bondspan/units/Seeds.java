package org.bondspan.units;

import java.util.stream.LongStream;

/** Numbers from which random cases are made; {@code -Dseed=7} repeats one. */
public final class Seeds {

    private Seeds() {}

    /** So many of them, or the one that is asked for. */
    public static LongStream upTo(long count) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, count) : LongStream.of(only);
    }
}
