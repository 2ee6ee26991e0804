package org.bondspan.benchmark;

import java.util.Arrays;
import org.bondspan.solve.KeyHeap;
import org.bondspan.solve.RoutingProblem;

/**
 * Shortest lengths from a node to all others, the plain way (Dijkstra, Numerische Mathematik 1, 1959): one of these per
 * terminal is the least that any method must spend that looks at the whole graph, so solving is measured in them.
 */
final class PlainDijkstra {
    private final int[] firstOfNode;
    private final int[] ends;
    private final long[] lengths;
    private final long[] distance;

    PlainDijkstra(RoutingProblem problem) {
        firstOfNode = new int[problem.nodeCount() + 1];
        for (int edge = 0; edge < problem.edgeCount(); edge++) {
            firstOfNode[problem.from(edge) + 1]++;
            firstOfNode[problem.to(edge) + 1]++;
        }
        for (int node = 0; node < problem.nodeCount(); node++) {
            firstOfNode[node + 1] += firstOfNode[node];
        }
        ends = new int[2 * problem.edgeCount()];
        lengths = new long[ends.length];
        distance = new long[problem.nodeCount()];
        int[] next = firstOfNode.clone();
        for (int edge = 0; edge < problem.edgeCount(); edge++) {
            put(next[problem.from(edge)]++, problem.to(edge), problem.length(edge));
            put(next[problem.to(edge)]++, problem.from(edge), problem.length(edge));
        }
    }

    private void put(int arc, int end, long length) {
        ends[arc] = end;
        lengths[arc] = length;
    }

    /** Number of nodes that can be reached. */
    int run(int start) {
        Arrays.fill(distance, Long.MAX_VALUE);
        KeyHeap heap = new KeyHeap();
        distance[start] = 0;
        heap.add(0, 0, start);
        int reached = 0;
        while (!heap.isEmpty()) {
            int node = heap.leastNode();
            long length = heap.leastWeight();
            heap.removeLeast();
            if (length > distance[node]) {
                continue;
            }
            reached++;
            for (int arc = firstOfNode[node]; arc < firstOfNode[node + 1]; arc++) {
                if (length + lengths[arc] < distance[ends[arc]]) {
                    distance[ends[arc]] = length + lengths[arc];
                    heap.add(distance[ends[arc]], 0, ends[arc]);
                }
            }
        }
        return reached;
    }

    /** One run from a landing of every terminal. */
    static int fromEveryTerminal(RoutingProblem problem) {
        PlainDijkstra search = new PlainDijkstra(problem);
        int reached = 0;
        for (int terminal = 0; terminal < problem.terminalCount(); terminal++) {
            reached += search.run(problem.attachmentNode(terminal, 0));
        }
        return reached;
    }
}
