package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;

/** Nodes of a core near to some of its nodes, numbered by themselves; used for one place after the other. */
final class Region {

    private final Core core;
    private final int mostNodes;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    private final int[] nodes;
    private final int[] localOf;
    private int[] edges = new int[64];
    private int size;

    Region(Core core, int mostNodes) {
        this.core = core;
        this.mostNodes = mostNodes;
        labels = new Labels(core.nodes());
        nodes = new int[core.nodes()];
        localOf = new int[core.nodes()];
    }

    /** The nodes up to a distance at the least grade, nearest first, as long as there are not too many. */
    void spread(int[] sources, long radius) {
        labels.clear();
        heap.clear();
        size = 0;
        for (int source : sources) {
            if (labels.offer(source, 0, 0, -1)) {
                heap.add(0, 0, source);
            }
        }
        long[] weights = core.weights(0);
        while (!heap.isEmpty() && heap.leastWeight() <= radius && (size < mostNodes || heap.leastWeight() == 0)) {
            int node = heap.leastNode();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            labels.settle(node);
            localOf[node] = size;
            nodes[size++] = node;
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                long weight = weights[core.kind(arc)];
                long far = labels.weight(node) + weight;
                if (weight >= 0 && labels.offer(core.arcEnd(arc), far, 0, -1)) {
                    heap.add(far, 0, core.arcEnd(arc));
                }
            }
        }
    }

    int size() {
        return size;
    }

    /** Number of a node in the region; below 0 where it is not. */
    int find(int node) {
        return labels.isSettled(node) ? localOf[node] : -1;
    }

    /** Node of the core by its number in the region. */
    int node(int local) {
        return nodes[local];
    }

    /** Edge of the core by its number in the region. */
    int edge(int local) {
        return edges[local];
    }

    /** The edges between nodes of the region, shrunk round the landings of leaves. */
    Reducer graph(List<Leaf> leaves, StretchPool pool) {
        boolean[] landing = new boolean[size];
        for (Leaf leaf : leaves) {
            for (int i = 0; i < leaf.size(); i++) {
                landing[leaf.node(i)] = true;
            }
        }
        Reducer graph = new Reducer(landing, pool, 2 * size);
        int count = 0;
        for (int local = 0; local < size; local++) {
            int node = nodes[local];
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                int end = find(core.arcEnd(arc));
                if (end > local) {
                    if (count == edges.length) {
                        edges = Arrays.copyOf(edges, 2 * count);
                    }
                    edges[count] = core.arcEdge(arc);
                    graph.add(local, end, pool.addEdge(core, core.arcEdge(arc), count++));
                }
            }
        }
        graph.shrink();
        return graph;
    }
}
