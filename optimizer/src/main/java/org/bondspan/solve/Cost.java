package org.bondspan.solve;

/**
 * Weight, then length, then taps: compared in this order. Length and taps share one number, {@code extent}, so that
 * sums of costs are two plain additions; there are fewer taps than {@link #TAPS} because there are fewer terminals.
 */
record Cost(long weight, long extent) implements Comparable<Cost> {

    /** One unit of length in an extent; one tap is 1. */
    static final int TAPS = 1024;

    static final Cost NOTHING = new Cost(0, 0);
    static final Cost UNKNOWN = new Cost(Long.MAX_VALUE / 2, 0);

    static Cost of(long weight, long length, int taps) {
        return new Cost(weight, length * TAPS + taps);
    }

    long length() {
        return extent / TAPS;
    }

    int taps() {
        return (int) (extent % TAPS);
    }

    Cost plus(Cost other) {
        return new Cost(weight + other.weight, extent + other.extent);
    }

    @Override
    public int compareTo(Cost other) {
        int byWeight = Long.compare(weight, other.weight);
        return byWeight != 0 ? byWeight : Long.compare(extent, other.extent);
    }
}
