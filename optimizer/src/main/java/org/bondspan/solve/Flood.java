package org.bondspan.solve;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** What can be reached from a node, breadth first, and how. Frozen. */
final class Flood {

    private final int[] order;
    private final int[] arcTo;

    /**
     * @param arcWeight arcs below 0 are closed
     * @param isClosed nodes that are not entered; the start is not one of them
     */
    Flood(Core core, int start, long[] arcWeight, IntPredicate isClosed) {
        order = new int[core.nodes()];
        arcTo = new int[core.nodes()];
        Arrays.fill(order, -1);
        int[] queue = new int[core.nodes()];
        int to = 0;
        order[start] = 0;
        arcTo[start] = -1;
        queue[to++] = start;
        for (int at = 0; at < to; at++) {
            int node = queue[at];
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                int end = core.arcEnd(arc);
                if (order[end] < 0 && arcWeight[arc] >= 0 && !isClosed.test(end)) {
                    order[end] = to;
                    arcTo[end] = arc;
                    queue[to++] = end;
                }
            }
        }
    }

    boolean reaches(int node) {
        return order[node] >= 0;
    }

    /** Arc by which a node was reached, -1 at the start. */
    int arcTo(int node) {
        return arcTo[node];
    }

    /** Landing of a leaf that was reached first, or -1. */
    int firstReached(Leaf leaf) {
        int first = -1;
        for (int i = 0; i < leaf.size(); i++) {
            int node = leaf.node(i);
            if (order[node] >= 0 && (first < 0 || order[node] < order[first])) {
                first = node;
            }
        }
        return first;
    }
}
