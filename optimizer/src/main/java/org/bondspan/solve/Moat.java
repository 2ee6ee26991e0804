package org.bondspan.solve;

/**
 * A set of nested cuts round some leaves: each node in it lies within cuts of this total width. What links those
 * leaves, or anything that hangs at such a node, with the root has to cross them.
 */
final class Moat {

    private final long leaves;
    private final long width;
    private final long[] depth;

    /**
     * @param leaves leaves inside all of the cuts
     * @param depth by node: total width of the cuts round it; becomes the moat's own
     */
    Moat(long leaves, long width, long[] depth) {
        this.leaves = leaves;
        this.width = width;
        this.depth = depth;
    }

    long leaves() {
        return leaves;
    }

    long width() {
        return width;
    }

    long depth(int node) {
        return depth[node];
    }

    /** The same by the nodes of a part of the core. */
    Moat within(Core part) {
        long[] there = new long[part.nodes()];
        for (int node = 0; node < there.length; node++) {
            there[node] = depth[part.origin(node)];
        }
        return new Moat(leaves, width, there);
    }

    /** This and another moat round the same leaves. */
    Moat plus(Moat other) {
        long[] sum = depth.clone();
        for (int v = 0; v < sum.length; v++) {
            sum[v] += other.depth[v];
        }
        return new Moat(leaves, width + other.width, sum);
    }
}
