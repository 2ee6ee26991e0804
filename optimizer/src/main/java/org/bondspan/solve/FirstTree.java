package org.bondspan.solve;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A good tree to start with: from one leaf, the nearest of the others is linked to the tree by a shortest way, until
 * all are (the shortest-path heuristic of Takahashi and Matsuyama, 1980, from memory). Ways are measured at the least
 * or at the largest grade, every leaf is the first once, and the tree is paid for what its stretches need.
 */
final class FirstTree {

    private final Core core;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    private final int[] landings;
    private int[] edges = new int[64];
    private int edgeCount;

    FirstTree(Core core) {
        this.core = core;
        labels = new Labels(core.nodes());
        landings = new int[core.leaves()];
    }

    /** The best tree found, if any was. */
    Optional<CoreTree> findTree() {
        Optional<CoreTree> best = Optional.empty();
        int[] grades = IntStream.of(0, core.need().grades() - 1).distinct().toArray();
        for (int grade : grades) {
            for (int first = 0; first < core.leaves(); first++) {
                Optional<CoreTree> tree = grow(first, grade);
                if (tree.isPresent()
                        && (best.isEmpty()
                                || tree.get().cost().compareTo(best.get().cost()) < 0)) {
                    best = tree;
                }
            }
        }
        return best;
    }

    private Optional<CoreTree> grow(int first, int grade) {
        edgeCount = 0;
        int linked = 1 << first;
        while (linked != core.everything()) {
            labels.clear();
            heap.clear();
            if (linked == 1 << first) {
                Leaf leaf = core.leaf(first);
                for (int i = 0; i < leaf.size(); i++) {
                    offer(leaf.node(i), leaf.cost(i).weight(), leaf.cost(i).extent(), -1);
                }
            } else {
                for (int i = 0; i < edgeCount; i++) {
                    offer(core.edgeEnd(edges[i], 0), 0, 0, -1);
                    offer(core.edgeEnd(edges[i], 1), 0, 0, -1);
                }
                offer(landings[first], 0, 0, -1);
            }
            int nearest = nearest(linked, grade);
            if (nearest < 0) {
                return Optional.empty();
            }
            int start = link(landings[nearest]);
            landings[first] = linked == 1 << first ? start : landings[first];
            linked |= 1 << nearest;
        }
        return CoreTree.find(core, Arrays.copyOf(edges, edgeCount), landings);
    }

    private void offer(int node, long weight, long extent, int arc) {
        if (labels.offer(node, weight, extent, arc)) {
            heap.add(weight, extent, node);
        }
    }

    /** Searches for the nearest leaf that is not linked, and sets where it lands; -1 when there is no way. */
    private int nearest(int linked, int grade) {
        long[] arcWeight = core.arcWeights(grade);
        long[] arcExtent = core.arcExtents(grade);
        int nearest = -1;
        Cost least = Cost.UNKNOWN;
        while (!heap.isEmpty() && heap.leastWeight() <= least.weight()) {
            int node = heap.leastNode();
            long weight = heap.leastWeight();
            long extent = heap.leastExtent();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            labels.settle(node);
            for (int leaf = 0; leaf < core.leaves(); leaf++) {
                int at = (linked >>> leaf & 1) == 1 ? -1 : core.leaf(leaf).find(node);
                if (at >= 0) {
                    Cost cost = new Cost(weight, extent).plus(core.leaf(leaf).cost(at));
                    if (cost.compareTo(least) < 0) {
                        least = cost;
                        nearest = leaf;
                        landings[leaf] = node;
                    }
                }
            }
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                if (arcWeight[arc] >= 0 && !labels.isSettled(core.arcEnd(arc))) {
                    offer(core.arcEnd(arc), weight + arcWeight[arc], extent + arcExtent[arc], arc);
                }
            }
        }
        return nearest;
    }

    /** Adds the way from the tree to a node; returns where it leaves the tree. */
    private int link(int node) {
        int at = node;
        while (labels.arc(at) >= 0) {
            if (edgeCount == edges.length) {
                edges = Arrays.copyOf(edges, 2 * edgeCount);
            }
            edges[edgeCount++] = core.arcEdge(labels.arc(at));
            at = core.arcStart(labels.arc(at));
        }
        return at;
    }
}
