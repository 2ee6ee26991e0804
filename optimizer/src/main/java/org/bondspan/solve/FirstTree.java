package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Good trees to start with: from the root, the nearest of the other leaves is linked to the tree by a shortest way,
 * until all are (the shortest-path heuristic of Takahashi and Matsuyama, 1980, from memory). Ways are measured at the
 * least or at the largest grade, and each tree is paid for what its stretches need.
 *
 * <p>One search serves a whole tree: when a way has been added its nodes are offered at no cost, and what they improve
 * is looked at again.
 */
final class FirstTree {

    private final Core core;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    /** By node: the leaves that may land there, as a bit set. */
    private final int[] leavesAt;

    private final Cost[] least;
    private final int[] landings;
    private int[] edges = new int[64];
    private int edgeCount;

    FirstTree(Core core) {
        this.core = core;
        labels = new Labels(core.nodes());
        leavesAt = new int[core.nodes()];
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            for (int i = 0; i < core.leaf(leaf).size(); i++) {
                leavesAt[core.leaf(leaf).node(i)] |= 1 << leaf;
            }
        }
        least = new Cost[core.leaves()];
        landings = new int[core.leaves()];
    }

    /** The trees that were found, in no order. */
    List<CoreTree> trees() {
        List<CoreTree> trees = new ArrayList<>();
        int[] grades = IntStream.of(0, core.need().grades() - 1).distinct().toArray();
        for (int grade : grades) {
            grow(core.root(), grade).ifPresent(trees::add);
        }
        return trees;
    }

    private Optional<CoreTree> grow(int first, int grade) {
        begin(first);
        int linked = 1 << first;
        while (linked != core.everything()) {
            int nearest = nearest(linked, grade);
            if (nearest < 0) {
                return Optional.empty();
            }
            int start = link(landings[nearest]);
            if (linked == 1 << first) {
                landings[first] = start;
                restart(start);
            }
            linked |= 1 << nearest;
        }
        return CoreTree.find(core, Arrays.copyOf(edges, edgeCount), landings);
    }

    private void begin(int first) {
        edgeCount = 0;
        labels.clear();
        heap.clear();
        Arrays.fill(least, Cost.UNKNOWN);
        Leaf leaf = core.leaf(first);
        for (int i = 0; i < leaf.size(); i++) {
            offer(leaf.node(i), leaf.cost(i).weight(), leaf.cost(i).extent(), -1);
        }
    }

    /** From the tree alone, so that no way starts where the first leaf might have landed too. */
    private void restart(int start) {
        labels.clear();
        heap.clear();
        Arrays.fill(least, Cost.UNKNOWN);
        offer(start, 0, 0, -1);
        for (int i = 0; i < edgeCount; i++) {
            offer(core.edgeEnd(edges[i], 0), 0, 0, -1);
            offer(core.edgeEnd(edges[i], 1), 0, 0, -1);
        }
    }

    private void offer(int node, long weight, long extent, int arc) {
        if (labels.offer(node, weight, extent, arc)) {
            heap.add(weight, extent, node);
        }
    }

    /** Searches for the nearest leaf that is not linked, and where it lands; -1 when there is no way. */
    private int nearest(int linked, int grade) {
        int nearest = nearestKnown(linked);
        while (!heap.isEmpty() && (nearest < 0 || heap.leastWeight() < least[nearest].weight())) {
            int node = heap.leastNode();
            long weight = heap.leastWeight();
            long extent = heap.leastExtent();
            heap.removeLeast();
            if (weight != labels.weight(node) || extent != labels.extent(node)) {
                continue;
            }
            if ((leavesAt[node] & ~linked) != 0) {
                meet(node, leavesAt[node] & ~linked);
                nearest = nearestKnown(linked);
            }
            spread(node, grade);
        }
        return nearest;
    }

    private int nearestKnown(int linked) {
        int nearest = -1;
        for (int leaf = 0; leaf < least.length; leaf++) {
            boolean isOpen = (linked >>> leaf & 1) == 0 && !least[leaf].equals(Cost.UNKNOWN);
            if (isOpen && (nearest < 0 || least[leaf].compareTo(least[nearest]) < 0)) {
                nearest = leaf;
            }
        }
        return nearest;
    }

    private void meet(int node, int leaves) {
        for (int left = leaves; left != 0; left &= left - 1) {
            int leaf = Integer.numberOfTrailingZeros(left);
            Cost cost = new Cost(labels.weight(node), labels.extent(node))
                    .plus(core.leaf(leaf).costAt(node));
            if (cost.compareTo(least[leaf]) < 0) {
                least[leaf] = cost;
                landings[leaf] = node;
            }
        }
    }

    private void spread(int node, int grade) {
        long[] arcWeight = core.arcWeights(grade);
        long[] arcExtent = core.arcExtents(grade);
        long weight = labels.weight(node);
        long extent = labels.extent(node);
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            if (arcWeight[arc] >= 0) {
                offer(core.arcEnd(arc), weight + arcWeight[arc], extent + arcExtent[arc], arc);
            }
        }
    }

    /** Adds the way from the tree to a node; returns where it leaves the tree. */
    private int link(int node) {
        int at = node;
        while (labels.arc(at) >= 0) {
            if (edgeCount == edges.length) {
                edges = Arrays.copyOf(edges, 2 * edgeCount);
            }
            int arc = labels.arc(at);
            edges[edgeCount++] = core.arcEdge(arc);
            labels.put(at, 0, 0, -1);
            heap.add(0, 0, at);
            at = core.arcStart(arc);
        }
        return at;
    }
}
