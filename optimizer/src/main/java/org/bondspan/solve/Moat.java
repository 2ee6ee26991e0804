package org.bondspan.solve;

import java.util.BitSet;
import java.util.function.IntToLongFunction;

/**
 * A set of nested cuts round some leaves: each node in it lies within cuts of this total width. What links those
 * leaves, or anything that hangs at such a node, with the root has to cross them. Nodes outside of all cuts take a bit
 * each, as most moats are small and there may be many. Immutable.
 */
final class Moat {

    private final long leaves;
    private final long width;
    private final BitSet nodes;
    /** The nodes within the outermost cut as bits, and by word how many come before. */
    private final long[] words;

    private final int[] before;
    /** By place among those nodes. */
    private final long[] depth;

    /**
     * @param leaves leaves inside all of the cuts
     * @param nodes nodes within the outermost cut; becomes the moat's own
     * @param depth by node: total width of the cuts round it
     */
    Moat(long leaves, long width, BitSet nodes, IntToLongFunction depth) {
        this.leaves = leaves;
        this.width = width;
        this.nodes = nodes;
        words = nodes.toLongArray();
        before = new int[words.length];
        for (int word = 1; word < words.length; word++) {
            before[word] = before[word - 1] + Long.bitCount(words[word - 1]);
        }
        this.depth = new long[nodes.cardinality()];
        int place = 0;
        for (int node = nodes.nextSetBit(0); node >= 0; node = nodes.nextSetBit(node + 1)) {
            this.depth[place++] = depth.applyAsLong(node);
        }
    }

    long leaves() {
        return leaves;
    }

    long width() {
        return width;
    }

    long depth(int node) {
        int word = node >> 6;
        long bit = 1L << node;
        return word < words.length && (words[word] & bit) != 0
                ? depth[before[word] + Long.bitCount(words[word] & (bit - 1))]
                : 0;
    }

    /** The same by the nodes of a part of the core. */
    Moat within(Core part) {
        BitSet there = new BitSet();
        for (int node = 0; node < part.nodes(); node++) {
            there.set(node, nodes.get(part.origin(node)));
        }
        return new Moat(leaves, width, there, node -> depth(part.origin(node)));
    }

    /** This and another moat round the same leaves. */
    Moat plus(Moat other) {
        BitSet all = (BitSet) nodes.clone();
        all.or(other.nodes);
        return new Moat(leaves, width + other.width, all, node -> depth(node) + other.depth(node));
    }
}
