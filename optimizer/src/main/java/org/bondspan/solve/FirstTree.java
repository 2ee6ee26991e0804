package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Good trees to start with: from some leaf, the nearest of the other leaves is linked to the tree by a shortest way,
 * until all are (the shortest-path heuristic of Takahashi and Matsuyama, 1980, from memory). Ways are measured at one
 * grade throughout, or at the grade that each leaf needs with the first, leaves of large grades coming first; each tree
 * is paid for what its stretches need.
 *
 * <p>One search serves a whole tree: when a way has been added its nodes are offered at no cost, and what they improve
 * is looked at again.
 */
final class FirstTree {

    private final Core core;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();

    private final Cost[] least;
    private final int[] landings;
    private final boolean[] isOpen;
    private int[] edges = new int[64];
    private int edgeCount;
    private int start;

    FirstTree(Core core) {
        this.core = core;
        labels = new Labels(core.nodes());
        least = new Cost[core.leaves()];
        landings = new int[core.leaves()];
        isOpen = new boolean[core.leaves()];
    }

    /** A tree from the root; of the ways to find one, the first by which there is one, the best way first. */
    Optional<CoreTree> find() {
        int root = core.root();
        return findDownwards(root)
                .or(() -> findAt(root, core.need().grades() - 1))
                .or(() -> findAt(root, 0));
    }

    /** The trees that were found from the root, in no order. */
    List<CoreTree> trees() {
        return trees(core.root());
    }

    /** The trees that were found from a leaf, in no order. */
    List<CoreTree> trees(int first) {
        List<CoreTree> trees = new ArrayList<>();
        int top = core.need().grades() - 1;
        for (int grade : IntStream.of(0, top).distinct().toArray()) {
            findAt(first, grade).ifPresent(trees::add);
        }
        if (top > 0) {
            findDownwards(first).ifPresent(trees::add);
        }
        return trees;
    }

    private Optional<CoreTree> findAt(int first, int grade) {
        begin(first);
        Arrays.fill(isOpen, true);
        isOpen[first] = false;
        return linkAll(first, grade) ? tree() : Optional.empty();
    }

    /**
     * Leaves in order of what they need with the first. Where all needs are with the first, this finds a tree if there
     * is any and each leaf can land at one node only: a leaf that cannot be linked at its own grade, with what was
     * bought at this grade or more, has no way to the first at all.
     */
    private Optional<CoreTree> findDownwards(int first) {
        begin(first);
        for (int grade = core.need().grades() - 1; grade >= 0; grade--) {
            if (start >= 0) {
                restart();
            }
            Arrays.fill(isOpen, false);
            for (int leaf = 0; leaf < isOpen.length; leaf++) {
                isOpen[leaf] = leaf != first && core.need().floorOfPair(leaf, first) == grade;
            }
            if (!linkAll(first, grade)) {
                return Optional.empty();
            }
        }
        return tree();
    }

    private Optional<CoreTree> tree() {
        return CoreTree.find(core, Arrays.copyOf(edges, edgeCount), landings);
    }

    /** Links all leaves that are open; returns whether there was a way to each. */
    private boolean linkAll(int first, int grade) {
        for (int left = countOpen(); left > 0; left--) {
            int nearest = nearest(grade);
            if (nearest < 0) {
                return false;
            }
            int leavesTree = link(landings[nearest]);
            isOpen[nearest] = false;
            if (start < 0) {
                start = leavesTree;
                landings[first] = leavesTree;
                restart();
            }
        }
        return true;
    }

    private int countOpen() {
        int count = 0;
        for (boolean open : isOpen) {
            count += open ? 1 : 0;
        }
        return count;
    }

    private void begin(int first) {
        edgeCount = 0;
        start = -1;
        labels.clear();
        heap.clear();
        Arrays.fill(least, Cost.UNKNOWN);
        Leaf leaf = core.leaf(first);
        for (int i = 0; i < leaf.size(); i++) {
            offer(leaf.node(i), leaf.cost(i).weight(), leaf.cost(i).extent(), -1);
        }
    }

    /** From the tree alone, so that no way starts where the first leaf might have landed too. */
    private void restart() {
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

    /** Searches for the nearest leaf that is open, and where it lands; -1 when there is no way. */
    private int nearest(int grade) {
        int nearest = nearestKnown();
        while (!heap.isEmpty() && (nearest < 0 || heap.leastWeight() < least[nearest].weight())) {
            int node = heap.leastNode();
            long weight = heap.leastWeight();
            long extent = heap.leastExtent();
            heap.removeLeast();
            if (weight != labels.weight(node) || extent != labels.extent(node)) {
                continue;
            }
            if (meet(node)) {
                nearest = nearestKnown();
            }
            spread(node, grade);
        }
        return nearest;
    }

    private int nearestKnown() {
        int nearest = -1;
        for (int leaf = 0; leaf < least.length; leaf++) {
            boolean isKnown = isOpen[leaf] && !least[leaf].equals(Cost.UNKNOWN);
            if (isKnown && (nearest < 0 || least[leaf].compareTo(least[nearest]) < 0)) {
                nearest = leaf;
            }
        }
        return nearest;
    }

    private boolean meet(int node) {
        boolean met = false;
        LandingIndex at = core.landings();
        for (int i = at.first(node); i < at.first(node + 1); i++) {
            int leaf = at.leaf(i);
            if (isOpen[leaf]) {
                met = true;
                Cost cost = new Cost(labels.weight(node), labels.extent(node))
                        .plus(core.leaf(leaf).costAt(node));
                if (cost.compareTo(least[leaf]) < 0) {
                    least[leaf] = cost;
                    landings[leaf] = node;
                }
            }
        }
        return met;
    }

    private void spread(int node, int grade) {
        long[] weights = core.weights(grade);
        long[] extents = core.extents(grade);
        long weight = labels.weight(node);
        long extent = labels.extent(node);
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            int kind = core.kind(arc);
            if (weights[kind] >= 0) {
                offer(core.arcEnd(arc), weight + weights[kind], extent + extents[kind], arc);
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
