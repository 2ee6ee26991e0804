package org.bondspan.network;

/**
 * The least copper between two places: what they lie apart along the three axes. That holds where no single run is
 * shorter than its own ends lie apart, since the ways of several runs then are not either. An oblique line is shorter,
 * and a measured one may be: on a network with such a run nothing is known, and all is taken to lie together.
 */
final class Apart {
    private final Network network;
    private final NetworkArrays arrays;
    private final boolean known;

    Apart(Network network) {
        this.network = network;
        this.arrays = network.arrays();
        boolean holds = true;
        for (int edge = 0; edge < arrays.edgeCount() && holds; edge++) {
            holds = isNoShorterThanApart(edge);
        }
        this.known = holds;
    }

    /** Metal is not passed by copper, and what is installed is no new copper. */
    private boolean isNoShorterThanApart(int edge) {
        int from = arrays.from(edge);
        int to = arrays.to(edge);
        return network.isMetal(from)
                || network.isMetal(to)
                || arrays.kind(edge) == EdgeKind.INSTALLED
                || arrays.length(edge) >= measure(from, to);
    }

    /** Whether anything is known. */
    boolean isKnown() {
        return known;
    }

    /** Nanometres; 0 where nothing is known, or where one of the two is metal. */
    long between(int node, int other) {
        return known && !network.isMetal(node) && !network.isMetal(other) ? measure(node, other) : 0;
    }

    private long measure(int a, int b) {
        return Math.abs(arrays.x(a) - arrays.x(b))
                + Math.abs(arrays.y(a) - arrays.y(b))
                + Math.abs(arrays.elevation(a) - arrays.elevation(b));
    }

    /**
     * The least weight of three runs that meet in one place, if their ends lie at these nodes. Each axis by itself, the
     * best place is the end of one of them.
     *
     * @param ends three nodes
     * @param rates weight per unit of length of the run to each
     * @param unit nanometres of a unit of length
     */
    long leastWeight(int[] ends, long[] rates, long unit) {
        if (!known) {
            return 0;
        }
        long weight = 0;
        for (int axis = 0; axis < 3; axis++) {
            long least = Long.MAX_VALUE;
            for (int place : ends) {
                least = network.isMetal(place) ? least : Math.min(least, weight(ends, rates, unit, axis, place));
            }
            weight += least == Long.MAX_VALUE ? 0 : least;
        }
        return weight;
    }

    private long weight(int[] ends, long[] rates, long unit, int axis, int place) {
        long weight = 0;
        for (int i = 0; i < ends.length; i++) {
            if (!network.isMetal(ends[i])) {
                weight += rates[i] * (Math.abs(along(axis, ends[i]) - along(axis, place)) / unit);
            }
        }
        return weight;
    }

    private long along(int axis, int node) {
        return axis == 0 ? arrays.x(node) : axis == 1 ? arrays.y(node) : arrays.elevation(node);
    }
}
