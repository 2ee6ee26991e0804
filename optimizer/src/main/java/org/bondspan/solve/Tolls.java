package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What arcs may still be charged at one grade: at first what each costs at this grade more than at the grade below.
 * Landings are arcs like any other: into a leaf from where it may land, and from the root into where the root may land,
 * there with the cost beyond the root's least. The toll of an arc out of a node, in the arrays of the core, is that of
 * entering the node by it.
 */
final class Tolls {

    /** Tolls of a way where there is none: more than any tree weighs, and sums do not overflow. */
    static final long NO_WAY = Long.MAX_VALUE / 8;

    private static final int NOWHERE = -1;

    private final Core core;
    private final long[] toll;
    private final long[][] landing;
    private final int[] rootPlace;
    private final long[] rootToll;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();

    /** @param labels scratch by node of the core */
    Tolls(Core core, int grade, Labels labels) {
        this.core = core;
        this.labels = labels;
        toll = differences(core, grade);
        landing = new long[core.leaves()][];
        for (int leaf = 0; leaf < landing.length; leaf++) {
            landing[leaf] = landings(core.leaf(leaf), grade, 0);
        }
        Leaf root = core.leaf(core.root());
        rootToll = landings(root, grade, root.leastWeight());
        rootPlace = new int[core.nodes()];
        Arrays.fill(rootPlace, NOWHERE);
        for (int i = 0; i < root.size(); i++) {
            rootPlace[root.node(i)] = i;
        }
    }

    private static long[] differences(Core core, int grade) {
        long[] byKind = core.weights(grade).clone();
        if (grade > 0) {
            long[] below = core.weights(grade - 1);
            for (int kind = 0; kind < byKind.length; kind++) {
                byKind[kind] -= byKind[kind] < 0 ? 0 : below[kind];
            }
        }
        long[] toll = new long[2 * core.edges()];
        for (int arc = 0; arc < toll.length; arc++) {
            toll[arc] = byKind[core.kind(arc)];
        }
        return toll;
    }

    /** Landings are paid once, at the least grade. */
    private static long[] landings(Leaf leaf, int grade, long paidAlready) {
        long[] landing = new long[leaf.size()];
        for (int i = 0; i < landing.length && grade == 0; i++) {
            landing[i] = leaf.cost(i).weight() - paidAlready;
        }
        return landing;
    }

    /** Toll left on an arc, below 0 where this grade cannot be met. */
    long of(int arc) {
        return toll[arc];
    }

    /** Toll left on the i-th landing of a leaf. */
    long ofLanding(int leaf, int i) {
        return landing[leaf][i];
    }

    boolean mayRootLand(int node) {
        return rootPlace[node] >= 0;
    }

    /** Toll left on landing the root on a node where it may land. */
    long ofRoot(int node) {
        return rootToll[rootPlace[node]];
    }

    /** Toll left, at least, on landing the root on what is dug; more than any sum where it may land nowhere there. */
    long ofRoot(Dig dig) {
        Leaf root = core.leaf(core.root());
        long least = Long.MAX_VALUE;
        for (int i = 0; i < root.size(); i++) {
            least = dig.has(root.node(i)) ? Math.min(least, rootToll[i]) : least;
        }
        return least;
    }

    /**
     * Charges nested cuts up to a distance.
     *
     * @param dig what all of them are round
     * @param distance beyond it, by the tolls, of the nodes that are settled
     */
    void charge(Dig dig, Labels distance, long far) {
        BitSet leaves = dig.leaves();
        for (int leaf = leaves.nextSetBit(0); leaf >= 0; leaf = leaves.nextSetBit(leaf + 1)) {
            for (int i = 0; i < landing[leaf].length; i++) {
                int node = core.leaf(leaf).node(i);
                landing[leaf][i] -= dig.has(node) ? 0 : Math.min(far, distance.weight(node));
            }
        }
        Leaf root = core.leaf(core.root());
        for (int i = 0; i < root.size(); i++) {
            rootToll[i] -= dig.has(root.node(i)) ? far : 0;
        }
        for (int i = 0; i < dig.rimCount(); i++) {
            charge(dig, dig.rim(i), 0, distance, far);
        }
        for (int i = 0; i < distance.touchedCount(); i++) {
            int node = distance.touched(i);
            if (distance.isSettled(node) && distance.weight(node) < far) {
                if (rootPlace[node] >= 0) {
                    rootToll[rootPlace[node]] -= far - distance.weight(node);
                }
                charge(dig, node, distance.weight(node), distance, far);
            }
        }
    }

    private void charge(Dig dig, int node, long near, Labels distance, long far) {
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            int end = core.arcEnd(arc);
            if (toll[arc] >= 0 && !dig.has(end)) {
                toll[arc] -= Math.max(0, Math.min(far, distance.weight(end)) - near);
            }
        }
    }

    /**
     * By node: tolls left on the cheapest way to it from the root.
     *
     * @param most ways of higher tolls do not matter; they may be {@link #NO_WAY}
     */
    long[] fromRoot(long most) {
        begin();
        Leaf root = core.leaf(core.root());
        for (int i = 0; i < root.size(); i++) {
            offer(root.node(i), rootToll[i]);
        }
        return spread(true, most);
    }

    /** By edge: tolls left, at least, on the way of any tree from the root through the edge to some of the leaves. */
    long[] detours(BitSet leaves) {
        long[] fromRoot = fromRoot(NO_WAY);
        begin();
        for (int leaf = leaves.nextSetBit(0); leaf >= 0; leaf = leaves.nextSetBit(leaf + 1)) {
            for (int i = 0; i < landing[leaf].length; i++) {
                offer(core.leaf(leaf).node(i), landing[leaf][i]);
            }
        }
        long[] toLeaf = spread(false, NO_WAY);
        long[] detour = new long[core.edges()];
        for (int edge = 0; edge < detour.length; edge++) {
            int arc = core.arcOf(edge);
            int a = core.arcStart(arc);
            int b = core.arcEnd(arc);
            detour[edge] = toll[arc] < 0
                    ? Long.MAX_VALUE / 4
                    : Math.min(fromRoot[b] + toll[arc] + toLeaf[a], fromRoot[a] + toll[core.twin(arc)] + toLeaf[b]);
        }
        return detour;
    }

    private void begin() {
        labels.clear();
        heap.clear();
    }

    private void offer(int node, long far) {
        if (labels.offer(node, far, 0, -1)) {
            heap.add(far, 0, node);
        }
    }

    private long[] spread(boolean away, long most) {
        long[] far = new long[core.nodes()];
        Arrays.fill(far, NO_WAY);
        while (!heap.isEmpty() && heap.leastWeight() <= most) {
            int node = heap.leastNode();
            long way = heap.leastWeight();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            labels.settle(node);
            far[node] = way;
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                if (toll[arc] >= 0) {
                    offer(core.arcEnd(arc), way + (away ? toll[core.twin(arc)] : toll[arc]));
                }
            }
        }
        return far;
    }
}
