package org.bondspan.solve;

import java.util.List;

/** By node: the leaves that may land there, ascending. Frozen. */
final class LandingIndex {

    private final int[] first;
    private final int[] leaves;

    LandingIndex(int nodes, List<Leaf> all) {
        first = new int[nodes + 1];
        for (Leaf leaf : all) {
            for (int i = 0; i < leaf.size(); i++) {
                first[leaf.node(i) + 1]++;
            }
        }
        for (int v = 0; v < nodes; v++) {
            first[v + 1] += first[v];
        }
        leaves = new int[first[nodes]];
        int[] place = first.clone();
        for (int leaf = 0; leaf < all.size(); leaf++) {
            for (int i = 0; i < all.get(leaf).size(); i++) {
                leaves[place[all.get(leaf).node(i)]++] = leaf;
            }
        }
    }

    int count(int node) {
        return first[node + 1] - first[node];
    }

    /** The leaves at a node are those from {@code first(node)} to before {@code first(node + 1)}. */
    int first(int node) {
        return first[node];
    }

    int leaf(int place) {
        return leaves[place];
    }
}
