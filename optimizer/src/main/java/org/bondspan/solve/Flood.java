package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntPredicate;

/** Searches breadth first for ways from a node to leaves, one search after the other on the same arrays. */
final class Flood {

    private final Core core;
    private final int[] seen;
    private final int[] arcTo;
    private final int[] queue;
    private int now;

    Flood(Core core) {
        this.core = core;
        seen = new int[core.nodes()];
        arcTo = new int[core.nodes()];
        queue = new int[core.nodes()];
    }

    /** Ways to the leaves that were looked for. Frozen. */
    static final class Ways {
        private final int[] touch;
        private final int[][] arcs;

        private Ways(int[] touch, int[][] arcs) {
            this.touch = touch;
            this.arcs = arcs;
        }

        /** Landing of a leaf that was reached first, or -1. */
        int touch(int leaf) {
            return touch[leaf];
        }

        /** Arcs of the way to a leaf, the last one first. The array is not to be changed. */
        int[] arcs(int leaf) {
            return arcs[leaf];
        }
    }

    /**
     * Goes on until all leaves that are looked for have been reached, or everything that can be.
     *
     * @param closedArcs arcs that are not gone along
     * @param isClosed nodes that are not entered; the start is not one of them
     * @param leaves those that are looked for, as a side
     */
    Ways from(int start, BitSet closedArcs, IntPredicate isClosed, long leaves) {
        int[] touch = new int[core.leaves()];
        Arrays.fill(touch, -1);
        now++;
        int to = 0;
        long left = see(start, -1, to++, touch, leaves);
        for (int at = 0; at < to && left != 0; at++) {
            int node = queue[at];
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                int end = core.arcEnd(arc);
                if (seen[end] != now && !closedArcs.get(arc) && !isClosed.test(end)) {
                    left = see(end, arc, to++, touch, left);
                }
            }
        }
        int[][] arcs = new int[touch.length][];
        Arrays.setAll(arcs, leaf -> touch[leaf] < 0 ? new int[0] : arcsTo(touch[leaf]));
        return new Ways(touch, arcs);
    }

    /** Returns the leaves that are still looked for. */
    private long see(int node, int byArc, int place, int[] touch, long leaves) {
        seen[node] = now;
        arcTo[node] = byArc;
        queue[place] = node;
        long left = leaves;
        LandingIndex at = core.landings();
        for (int i = at.first(node); i < at.first(node + 1); i++) {
            if ((left >>> at.leaf(i) & 1) == 1) {
                touch[at.leaf(i)] = node;
                left &= ~(1L << at.leaf(i));
            }
        }
        return left;
    }

    private int[] arcsTo(int node) {
        int length = 0;
        for (int at = node; arcTo[at] >= 0; at = core.arcStart(arcTo[at])) {
            length++;
        }
        int[] arcs = new int[length];
        int at = node;
        for (int i = 0; i < length; i++) {
            arcs[i] = arcTo[at];
            at = core.arcStart(arcTo[at]);
        }
        return arcs;
    }

    /** Whether the last search came to a node. */
    boolean reached(int node) {
        return seen[node] == now;
    }
}
