package org.bondspan.solve;

import java.util.stream.LongStream;

/** Numbers from which random cases are made; {@code -Dseed=7} repeats one. */
final class Seeds {

    private Seeds() {}

    static LongStream upTo(long count) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, count) : LongStream.of(only);
    }
}
