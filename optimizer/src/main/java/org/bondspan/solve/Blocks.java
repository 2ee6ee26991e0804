package org.bondspan.solve;

import java.util.Arrays;

/**
 * The blocks of a core: its largest parts that hang together whichever node is taken out. Two blocks share one node at
 * most. Seen from node 0, each block has a top, the node through which all ways into it lead. Linear (Hopcroft and
 * Tarjan, "Efficient algorithms for graph manipulation", Communications of the ACM 16(6), 1973, from memory). Frozen.
 */
final class Blocks {

    private static final int NONE = -1;

    private final Core core;
    private final int[] order;
    private final int[] entered;
    private final int[] arcTo;
    private final int[] up;
    private int[] top = new int[16];
    private int count;
    private int reached;

    Blocks(Core core) {
        this.core = core;
        order = new int[core.nodes()];
        entered = new int[core.nodes()];
        Arrays.fill(entered, NONE);
        arcTo = new int[core.nodes()];
        up = new int[core.nodes()];
        number(lowest());
    }

    /** Enters nodes depth first; by node, the earliest one that it and what was entered from it are linked to. */
    private int[] lowest() {
        int[] lowest = new int[core.nodes()];
        int[] next = new int[core.nodes()];
        int at = enter(0, NONE, lowest, next);
        while (at >= 0) {
            if (next[at] < core.firstArc(at + 1)) {
                int arc = next[at]++;
                int end = core.arcEnd(arc);
                if (entered[end] < 0) {
                    at = enter(end, arc, lowest, next);
                } else if (arcTo[at] < 0 || arc != core.twin(arcTo[at])) {
                    lowest[at] = Math.min(lowest[at], entered[end]);
                }
            } else {
                int before = arcTo[at] < 0 ? NONE : core.arcStart(arcTo[at]);
                if (before >= 0) {
                    lowest[before] = Math.min(lowest[before], lowest[at]);
                }
                at = before;
            }
        }
        return lowest;
    }

    private int enter(int node, int byArc, int[] lowest, int[] next) {
        arcTo[node] = byArc;
        order[reached] = node;
        entered[node] = reached;
        lowest[node] = reached++;
        next[node] = core.firstArc(node);
        return node;
    }

    /**
     * What was entered from a node, and is linked to nothing before it, begins a block that has the node for its top.
     */
    private void number(int[] lowest) {
        up[0] = NONE;
        for (int i = 1; i < reached; i++) {
            int node = order[i];
            int before = core.arcStart(arcTo[node]);
            up[node] = lowest[node] < entered[before] ? up[before] : begin(before);
        }
    }

    private int begin(int node) {
        if (count == top.length) {
            top = Arrays.copyOf(top, 2 * count);
        }
        top[count] = node;
        return count++;
    }

    /** Whether every node is linked with node 0. */
    boolean isInOnePiece() {
        return reached == core.nodes();
    }

    /** Number of blocks. One that is met on the way from node 0 to another has a smaller number. */
    int count() {
        return count;
    }

    /** Node of a block through which the ways from node 0 enter it. */
    int top(int block) {
        return top[block];
    }

    /** The block through which the ways from node 0 come to a node; -1 for node 0. */
    int up(int node) {
        return up[node];
    }

    int ofEdge(int edge) {
        int a = core.edgeEnd(edge, 0);
        int b = core.edgeEnd(edge, 1);
        return up[entered[a] > entered[b] ? a : b];
    }
}
