package org.bondspan.solve;

import java.util.Arrays;

/**
 * Least costs from a node to a leaf, landing included, taps not, with every stretch at one grade; made when asked for.
 */
final class Distances {

    private final Core core;
    private final long[][][] weight;
    private final long[][][] extent;
    private final KeyHeap heap = new KeyHeap();

    Distances(Core core) {
        this.core = core;
        weight = new long[core.leaves()][core.need().grades()][];
        extent = new long[core.leaves()][core.need().grades()][];
    }

    /** Weights by node; {@link Cost#UNKNOWN} where there is no way. The array is not to be changed. */
    long[] weights(int leaf, int grade) {
        if (weight[leaf][grade] == null) {
            search(leaf, grade);
        }
        return weight[leaf][grade];
    }

    /** Extents by node, as in {@link Cost}. The array is not to be changed. */
    long[] extents(int leaf, int grade) {
        if (weight[leaf][grade] == null) {
            search(leaf, grade);
        }
        return extent[leaf][grade];
    }

    /** Least cost between two leaves, landings included. */
    Cost between(int leaf, int otherLeaf, int grade) {
        long[] w = weights(leaf, grade);
        long[] x = extents(leaf, grade);
        Cost least = Cost.UNKNOWN;
        Leaf other = core.leaf(otherLeaf);
        for (int i = 0; i < other.size(); i++) {
            int node = other.node(i);
            if (w[node] < Cost.UNKNOWN.weight()) {
                Cost cost = new Cost(w[node], x[node]).plus(withoutTaps(other.cost(i)));
                least = cost.compareTo(least) < 0 ? cost : least;
            }
        }
        return least;
    }

    private static Cost withoutTaps(Cost cost) {
        return Cost.of(cost.weight(), cost.length(), 0);
    }

    private void search(int leaf, int grade) {
        long[] w = new long[core.nodes()];
        Arrays.fill(w, Cost.UNKNOWN.weight());
        long[] x = new long[core.nodes()];
        heap.clear();
        Leaf from = core.leaf(leaf);
        for (int i = 0; i < from.size(); i++) {
            Cost landing = withoutTaps(from.cost(i));
            w[from.node(i)] = landing.weight();
            x[from.node(i)] = landing.extent();
            heap.add(landing.weight(), landing.extent(), from.node(i));
        }
        spread(w, x, core.arcWeights(grade), core.arcExtents(grade));
        weight[leaf][grade] = w;
        extent[leaf][grade] = x;
    }

    private void spread(long[] w, long[] x, long[] arcWeight, long[] arcExtent) {
        while (!heap.isEmpty()) {
            int node = heap.leastNode();
            boolean stale = heap.leastWeight() != w[node] || heap.leastExtent() != x[node];
            heap.removeLeast();
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1) && !stale; arc++) {
                int end = core.arcEnd(arc);
                long nextWeight = w[node] + arcWeight[arc];
                long nextExtent = x[node] + arcExtent[arc];
                if (arcWeight[arc] >= 0 && (nextWeight < w[end] || (nextWeight == w[end] && nextExtent < x[end]))) {
                    w[end] = nextWeight;
                    x[end] = nextExtent;
                    heap.add(nextWeight, nextExtent, end);
                }
            }
        }
    }
}
