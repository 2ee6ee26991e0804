package org.bondspan.solve;

import java.util.Arrays;

/** Best cost found so far at each node, with the arc that led there; cleared in no time. */
final class Labels {

    /** By node: twice the round in which it got its label, and 1 more once it is settled. */
    private final int[] mark;

    private final long[] weight;
    private final long[] extent;
    private final int[] arc;
    private int[] touched = new int[64];
    private int touchedCount;
    private int now;

    Labels(int nodes) {
        mark = new int[nodes];
        weight = new long[nodes];
        extent = new long[nodes];
        arc = new int[nodes];
    }

    void clear() {
        now += 2;
        touchedCount = 0;
    }

    /** Takes a cost for a node if it is the best so far. */
    boolean offer(int node, long w, long x, int byArc) {
        if (mark[node] < now) {
            mark[node] = now;
            if (touchedCount == touched.length) {
                touched = Arrays.copyOf(touched, 2 * touchedCount);
            }
            touched[touchedCount++] = node;
        } else if (w > weight[node] || (w == weight[node] && x >= extent[node])) {
            return false;
        }
        weight[node] = w;
        extent[node] = x;
        arc[node] = byArc;
        return true;
    }

    /** Sets the label of a node that has one. */
    void put(int node, long w, long x, int byArc) {
        weight[node] = w;
        extent[node] = x;
        arc[node] = byArc;
    }

    long weight(int node) {
        return weight[node];
    }

    long extent(int node) {
        return extent[node];
    }

    int arc(int node) {
        return arc[node];
    }

    /** Whether a cost would be the best so far at a node; never where it is settled. */
    boolean isBetter(int node, long w, long x) {
        int then = mark[node];
        return then < now || (then == now && (w < weight[node] || (w == weight[node] && x < extent[node])));
    }

    /** Ends the search for the best cost at a node that has a label. */
    void settle(int node) {
        mark[node] = now + 1;
    }

    boolean isSettled(int node) {
        return mark[node] > now;
    }

    /** Number of nodes that have a label. */
    int touchedCount() {
        return touchedCount;
    }

    int touched(int i) {
        return touched[i];
    }
}
