package org.bondspan.solve;

import java.util.stream.LongStream;

/** Numbers from which random cases are made; {@code -Dseed=7} repeats one. */
final class Seeds {

    private Seeds() {}

    static LongStream upTo(long count) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, count) : LongStream.of(only);
    }

    /** Numbers of blocks of a hundred seeds each, for cases so small that each alone is no test of its own. */
    static LongStream blocks(long count) {
        return Long.getLong("seed") == null ? LongStream.range(0, count) : LongStream.of(0);
    }

    /** The seeds of a block. */
    static LongStream of(long block) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(100 * block, 100 * block + 100) : LongStream.of(only);
    }
}
