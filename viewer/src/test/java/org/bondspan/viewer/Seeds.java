package org.bondspan.viewer;

import java.util.stream.LongStream;

/** Seeds of random tests; {@code -Dseed=7} repeats a single one. */
public final class Seeds {
    private Seeds() {}

    public static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 100) : LongStream.of(only);
    }
}
