package org.bondspan.network;

import java.util.Arrays;
import org.bondspan.solve.KeyHeap;
import org.bondspan.units.WireSize;

/** The runs on which new copper may be laid, from node to node, for finding others as short. */
final class CopperRuns {
    static final long FAR = Long.MAX_VALUE;

    private final Network network;
    private final NetworkArrays arrays;
    private final int[] firstOfNode;
    private final int[] edges;
    private final Apart apart;

    CopperRuns(Network network) {
        this.network = network;
        this.arrays = network.arrays();
        this.apart = new Apart(network);
        this.firstOfNode = new int[network.nodeCount() + 1];
        this.edges = new int[2 * arrays.edgeCount()];
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            firstOfNode[arrays.from(edge) + 1]++;
            firstOfNode[arrays.to(edge) + 1]++;
        }
        for (int node = 0; node < network.nodeCount(); node++) {
            firstOfNode[node + 1] += firstOfNode[node];
        }
        int[] next = Arrays.copyOf(firstOfNode, network.nodeCount());
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            edges[next[arrays.from(edge)]++] = edge;
            edges[next[arrays.to(edge)]++] = edge;
        }
    }

    Apart apart() {
        return apart;
    }

    int firstEdge(int node) {
        return firstOfNode[node];
    }

    int endEdge(int node) {
        return firstOfNode[node + 1];
    }

    /** The edge at an index between {@link #firstEdge} and {@link #endEdge}. */
    int edge(int index) {
        return edges[index];
    }

    int other(int edge, int node) {
        return arrays.from(edge) == node ? arrays.to(edge) : arrays.from(edge);
    }

    /** Whether new copper of that size may follow the edge. */
    boolean takes(int edge, WireSize size) {
        return arrays.kind(edge) != EdgeKind.INSTALLED
                && arrays.largest(edge).map(most -> most.isAtLeast(size)).orElse(true);
    }

    /** New copper that the edge costs at that size. */
    long length(int edge, WireSize size) {
        boolean free = arrays.freeUpTo(edge).map(most -> most.isAtLeast(size)).orElse(false);
        return free ? 0 : arrays.length(edge);
    }

    /** Nodes that a search may enter, and what it has spent when it does. */
    interface Entry {
        boolean mayEnter(int node, long length);
    }

    /**
     * Shortest copper from a node to others; metal is entered but not passed.
     *
     * @return by node; {@link #FAR} where none is found
     */
    long[] distances(int from, WireSize size, Entry entry) {
        long[] distance = new long[network.nodeCount()];
        Arrays.fill(distance, FAR);
        KeyHeap queue = new KeyHeap();
        distance[from] = 0;
        queue.add(0, 0, from);
        while (!queue.isEmpty()) {
            int node = queue.leastNode();
            long here = queue.leastWeight();
            queue.removeLeast();
            boolean metalOnTheWay = network.isMetal(node) && node != from;
            if (here > distance[node] || metalOnTheWay) {
                continue;
            }
            for (int i = firstEdge(node); i < endEdge(node); i++) {
                int next = other(edges[i], node);
                if (takes(edges[i], size)) {
                    long length = here + length(edges[i], size);
                    if (length < distance[next] && entry.mayEnter(next, length)) {
                        distance[next] = length;
                        queue.add(length, 0, next);
                    }
                }
            }
        }
        return distance;
    }
}
