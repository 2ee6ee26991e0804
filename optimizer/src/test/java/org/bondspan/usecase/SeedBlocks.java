package org.bondspan.usecase;

import java.util.stream.LongStream;

/** Seeds of random sites, 50 to a block; {@code -Dseed=7} leaves that one alone. */
final class SeedBlocks {
    private static final int SIZE = 50;

    private SeedBlocks() {}

    /** The first so many blocks. */
    static LongStream upTo(long count) {
        return Long.getLong("seed") == null ? LongStream.range(0, count) : LongStream.of(0);
    }

    static LongStream seeds(long block) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(SIZE * block, SIZE * block + SIZE) : LongStream.of(only);
    }
}
