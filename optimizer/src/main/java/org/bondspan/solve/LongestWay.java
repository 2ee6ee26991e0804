package org.bondspan.solve;

import java.util.Arrays;

/**
 * How long shortest ways between nodes of a problem can be, at most: twice the way from a node in the middle to the one
 * farthest from it, in each piece of the graph and at each need.
 *
 * <p>The weight of a way never falls when the need rises, so a need is looked at only where more edges are forbidden
 * above it.
 */
final class LongestWay {

    private static final int SMALL = 16;
    private static final int FAR_ENDS = 5;

    private final RoutingProblem problem;
    private final int[] firstArc;
    private final int[] arcs;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();

    LongestWay(RoutingProblem problem) {
        this.problem = problem;
        labels = new Labels(problem.nodeCount());
        firstArc = new int[problem.nodeCount() + 1];
        arcs = new int[2 * problem.edgeCount()];
        for (int e = 0; e < problem.edgeCount(); e++) {
            firstArc[problem.from(e) + 1]++;
            firstArc[problem.to(e) + 1]++;
        }
        for (int v = 0; v < problem.nodeCount(); v++) {
            firstArc[v + 1] += firstArc[v];
        }
        int[] place = firstArc.clone();
        for (int e = 0; e < problem.edgeCount(); e++) {
            arcs[place[problem.from(e)]++] = e;
            arcs[place[problem.to(e)]++] = e;
        }
    }

    /** No shortest way weighs more, at any need. */
    double weight() {
        double most = 0;
        for (int need = 0; need < problem.ranks(); need++) {
            if (need + 1 == problem.ranks() || isMoreForbiddenAbove(need)) {
                most = Math.max(most, weight(need));
            }
        }
        return most;
    }

    private boolean isMoreForbiddenAbove(int need) {
        for (int e = 0; e < problem.edgeCount(); e++) {
            if (isAllowed(e, need) && !isAllowed(e, need + 1)) {
                return true;
            }
        }
        return false;
    }

    private boolean isAllowed(int edge, int need) {
        return problem.tariffs().bought(problem.edges().tariff(edge), need) >= 0;
    }

    private double weight(int need) {
        double most = 0;
        boolean[] seen = new boolean[problem.nodeCount()];
        for (int v = 0; v < seen.length; v++) {
            if (!seen[v]) {
                int end = farthest(v, need);
                for (int i = 0; i < labels.touchedCount(); i++) {
                    seen[labels.touched(i)] = true;
                }
                int middle = labels.touchedCount() < SMALL ? end : middle(end, need);
                int farthest = farthest(middle, need);
                most = Math.max(most, 2.0 * labels.weight(farthest));
            }
        }
        return most;
    }

    /** The node nearest to all of some nodes that are far from each other: the node in the middle, about. */
    private int middle(int end, int need) {
        long[] most = new long[problem.nodeCount()];
        int next = end;
        for (int i = 0; i < FAR_ENDS; i++) {
            farthest(next, need);
            for (int j = 0; j < labels.touchedCount(); j++) {
                int node = labels.touched(j);
                most[node] = Math.max(most[node], labels.weight(node));
            }
            next = farthest(nearest(most), need);
        }
        return nearest(most);
    }

    private int nearest(long[] most) {
        int nearest = labels.touched(0);
        for (int i = 0; i < labels.touchedCount(); i++) {
            nearest = most[labels.touched(i)] < most[nearest] ? labels.touched(i) : nearest;
        }
        return nearest;
    }

    private int farthest(int start, int need) {
        labels.clear();
        heap.clear();
        labels.offer(start, 0, 0, -1);
        heap.add(0, 0, start);
        int last = start;
        while (!heap.isEmpty()) {
            int node = heap.leastNode();
            heap.removeLeast();
            if (!labels.isSettled(node)) {
                labels.settle(node);
                last = node;
                relax(node, need);
            }
        }
        return last;
    }

    private void relax(int node, int need) {
        for (int edge : Arrays.copyOfRange(arcs, firstArc[node], firstArc[node + 1])) {
            if (isAllowed(edge, need)) {
                int end = problem.from(edge) == node ? problem.to(edge) : problem.from(edge);
                long unit = problem.tariffs().perUnit(problem.edges().tariff(edge), need);
                long weight = Math.addExact(labels.weight(node), Math.multiplyExact(unit, problem.length(edge)));
                if (!labels.isSettled(end) && labels.offer(end, weight, 0, edge)) {
                    heap.add(weight, 0, end);
                }
            }
        }
    }
}
