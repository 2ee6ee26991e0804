package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntUnaryOperator;

/**
 * Terminals of the problem that land together, seen by the search as one: the nodes on which they may land, each with
 * what landing costs at the needs of these terminals alone. Usually a single terminal.
 */
final class Leaf {

    private final BitSet members;
    private final int[] nodes;
    private final Cost[] costs;

    /** The arrays become the leaf's own; every node once, ascending. */
    Leaf(BitSet members, int[] nodes, Cost[] costs) {
        this.members = members;
        this.nodes = nodes;
        this.costs = costs;
    }

    /** Terminals; not to be changed. */
    BitSet members() {
        return members;
    }

    int size() {
        return nodes.length;
    }

    int node(int i) {
        return nodes[i];
    }

    Cost cost(int i) {
        return costs[i];
    }

    /** Least weight of any landing. */
    long leastWeight() {
        long least = Long.MAX_VALUE;
        for (Cost cost : costs) {
            least = Math.min(least, cost.weight());
        }
        return least;
    }

    /** Place of a node among the leaf's, below 0 when it is none of them. */
    int find(int node) {
        return Arrays.binarySearch(nodes, node);
    }

    /** What landing on a node costs; the node is one of the leaf's. */
    Cost costAt(int node) {
        return costs[find(node)];
    }

    /** The same landings by other numbers of nodes, which keep their order; those numbered below 0 are left out. */
    Leaf renumbered(IntUnaryOperator number) {
        int[] kept = new int[nodes.length];
        Cost[] keptCosts = new Cost[nodes.length];
        int count = 0;
        for (int i = 0; i < nodes.length; i++) {
            int renumbered = number.applyAsInt(nodes[i]);
            if (renumbered >= 0) {
                kept[count] = renumbered;
                keptCosts[count++] = costs[i];
            }
        }
        return new Leaf(members, Arrays.copyOf(kept, count), Arrays.copyOf(keptCosts, count));
    }
}
