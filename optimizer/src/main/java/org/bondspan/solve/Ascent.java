package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Dual ascent at one grade: moats are dug round leaves until each is linked with the root by arcs that are used up.
 *
 * <p>Every arc into a cut has a toll, at first what the edge costs at this grade more than at the grade below; a cut of
 * some width takes that much off the toll of every arc that enters it, and tolls stay at 0 or more. A tree, its edges
 * directed away from the root, enters each cut round a leaf at least once by an edge of at least the grade that this
 * leaf needs with the root. So the widths add up to a lower bound of what the tree pays at this grade, and the tolls
 * left on its arcs come on top. (R. T. Wong, "A dual ascent approach for Steiner tree problems on a directed graph",
 * Mathematical Programming 28, 1984, read about.)
 *
 * <p>Here whole moats are dug at once, by Dijkstra's algorithm on the tolls, until another leaf or the root is met. A
 * leaf that meets another waits for it; leaves that wait for each other in a circle go on as one. So there are fewer
 * than two moats for each leaf.
 */
final class Ascent {

    private static final int NOTHING = -1;

    private final Core core;
    private final int root;
    private final int leaves;
    private final long[] toll;
    private final long[][] landing;
    /** By node: leaves of this grade that may land here. */
    private final int[] leavesAt;

    private final boolean[] isRoot;
    private final Classes heads;
    private final int[] group;
    private final int[] waitsFor;

    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    private final List<Moat> moats = new ArrayList<>();

    /** @param order all leaves, those round which to dig first coming first */
    Ascent(Core core, int grade, int[] order) {
        this.core = core;
        root = core.root();
        leaves = leavesOf(core, root, grade);
        toll = tolls(core, grade);
        labels = new Labels(core.nodes());
        landing = new long[core.leaves()][];
        leavesAt = new int[core.nodes()];
        isRoot = new boolean[core.nodes()];
        heads = new Classes(core.leaves());
        group = new int[core.leaves()];
        waitsFor = new int[core.leaves()];
        for (int leaf = 0; leaf < landing.length; leaf++) {
            Leaf at = core.leaf(leaf);
            landing[leaf] = new long[at.size()];
            for (int i = 0; i < at.size(); i++) {
                landing[leaf][i] = grade == 0 ? at.cost(i).weight() : 0;
                leavesAt[at.node(i)] |= leaves & (1 << leaf);
            }
        }
        for (int i = 0; i < core.leaf(root).size(); i++) {
            isRoot[core.leaf(root).node(i)] = true;
        }
        dig(order);
    }

    private static int leavesOf(Core core, int root, int grade) {
        int leaves = 0;
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            if (leaf != root && core.need().floor(1 << leaf, root) >= grade) {
                leaves |= 1 << leaf;
            }
        }
        return leaves;
    }

    private static long[] tolls(Core core, int grade) {
        long[] toll = core.arcWeights(grade).clone();
        if (grade > 0) {
            long[] below = core.arcWeights(grade - 1);
            for (int arc = 0; arc < toll.length; arc++) {
                toll[arc] = toll[arc] < 0 ? toll[arc] : toll[arc] - below[arc];
            }
        }
        return toll;
    }

    /** Total width of the moats. */
    long width() {
        return moats.stream().mapToLong(Moat::width).sum();
    }

    List<Moat> moats() {
        return moats;
    }

    private void dig(int[] order) {
        Arrays.setAll(group, leaf -> 1 << leaf);
        Arrays.fill(waitsFor, NOTHING);
        int open = leaves;
        while (open != 0) {
            int head = first(order, open);
            int met = digRound(group[head], leaves);
            open &= ~(1 << head);
            if (met >= 0) {
                waitsFor[head] = met;
                if (isCircle(head)) {
                    open |= 1 << joinCircle(head);
                }
            }
        }
        // Leaves with a choice of landings are met where nothing can go on from; what waits for them is not done.
        for (int left = leaves; left != 0; left &= left - 1) {
            digRound(Integer.lowestOneBit(left), 0);
        }
    }

    private static int first(int[] order, int open) {
        int i = 0;
        while ((open >>> order[i] & 1) == 0) {
            i++;
        }
        return order[i];
    }

    private boolean isCircle(int head) {
        int at = heads.find(waitsFor[head]);
        while (at != head && waitsFor[at] >= 0) {
            at = heads.find(waitsFor[at]);
        }
        return at == head;
    }

    private int joinCircle(int head) {
        int together = group[head];
        for (int at = heads.find(waitsFor[head]); at != head; at = heads.find(waitsFor[at])) {
            together |= group[at];
        }
        for (int left = together; left != 0; left &= left - 1) {
            heads.join(head, Integer.numberOfTrailingZeros(left));
        }
        int newHead = heads.find(head);
        group[newHead] = together;
        waitsFor[newHead] = NOTHING;
        return newHead;
    }

    /**
     * Digs round some leaves until one of the others that stop it, which is returned, or the root or nothing is met.
     */
    private int digRound(int inside, int stopping) {
        labels.clear();
        heap.clear();
        for (int left = inside; left != 0; left &= left - 1) {
            int leaf = Integer.numberOfTrailingZeros(left);
            for (int i = 0; i < landing[leaf].length; i++) {
                offer(core.leaf(leaf).node(i), landing[leaf][i]);
            }
        }
        while (!heap.isEmpty()) {
            int node = heap.leastNode();
            long far = heap.leastWeight();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            int met = leavesAt[node] & stopping & ~inside;
            if (isRoot[node] || met != 0) {
                fill(inside, far);
                return isRoot[node] ? NOTHING : Integer.numberOfTrailingZeros(met);
            }
            labels.settle(node);
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                if (toll[arc] >= 0) {
                    offer(core.arcEnd(arc), far + toll[arc]);
                }
            }
        }
        return NOTHING;
    }

    private void offer(int node, long far) {
        if (labels.offer(node, far, 0, -1)) {
            heap.add(far, 0, node);
        }
    }

    /** Takes the tolls for cuts up to a distance. */
    private void fill(int inside, long width) {
        if (width == 0) {
            return;
        }
        long[] depth = new long[core.nodes()];
        for (int left = inside; left != 0; left &= left - 1) {
            int leaf = Integer.numberOfTrailingZeros(left);
            for (int i = 0; i < landing[leaf].length; i++) {
                landing[leaf][i] -=
                        Math.min(width, labels.weight(core.leaf(leaf).node(i)));
            }
        }
        for (int i = 0; i < labels.touchedCount(); i++) {
            int node = labels.touched(i);
            long far = labels.weight(node);
            if (far >= width || !labels.isSettled(node)) {
                continue;
            }
            depth[node] = width - far;
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                if (toll[arc] >= 0) {
                    toll[arc] -= Math.max(0, Math.min(width, labels.weight(core.arcEnd(arc))) - far);
                }
            }
        }
        moats.add(new Moat(inside, width, depth));
    }

    /**
     * By edge: tolls left, at least, on the way of any tree from the root through the edge to some leaf of this grade.
     */
    long[] detours() {
        long[] fromRoot = spread(true);
        long[] toLeaf = spread(false);
        long[] detour = new long[core.edges()];
        for (int edge = 0; edge < detour.length; edge++) {
            int arc = core.arcOf(edge);
            int twin = core.twin(arc);
            int a = core.arcStart(arc);
            int b = core.arcEnd(arc);
            // The toll of an arc out of a node in the arrays is that of entering the node by it.
            detour[edge] = toll[arc] < 0
                    ? Long.MAX_VALUE / 4
                    : Math.min(fromRoot[b] + toll[arc] + toLeaf[a], fromRoot[a] + toll[twin] + toLeaf[b]);
        }
        return detour;
    }

    private long[] spread(boolean fromRoot) {
        labels.clear();
        heap.clear();
        for (int leaf = 0; leaf < landing.length; leaf++) {
            boolean isSource = fromRoot ? leaf == root : (leaves >>> leaf & 1) == 1;
            for (int i = 0; i < landing[leaf].length && isSource; i++) {
                offer(core.leaf(leaf).node(i), fromRoot ? 0 : landing[leaf][i]);
            }
        }
        long[] far = new long[core.nodes()];
        Arrays.fill(far, Long.MAX_VALUE / 8);
        while (!heap.isEmpty()) {
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
                    offer(core.arcEnd(arc), way + (fromRoot ? toll[core.twin(arc)] : toll[arc]));
                }
            }
        }
        return far;
    }
}
