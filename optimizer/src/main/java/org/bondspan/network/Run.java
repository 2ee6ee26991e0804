package org.bondspan.network;

import java.util.List;

/**
 * New copper between two nodes of the tree where something joins, as edges of the network.
 *
 * @param rank the rank at which it is bought
 */
record Run(int from, int to, List<Integer> edges, int rank) {
    Run {
        edges = List.copyOf(edges);
    }

    int otherEnd(int node) {
        return node == from ? to : from;
    }
}
