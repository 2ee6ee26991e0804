package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
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

    /** Tolls of a way where there is none: more than any tree weighs, and sums do not overflow. */
    static final long NO_WAY = Long.MAX_VALUE / 8;

    private static final int NOTHING = -1;

    private final Core core;
    private final int root;
    /** Leaves that need this grade with the root. */
    private final BitSet leaves;

    private final long[] toll;
    private final long[][] landing;
    private final boolean[] isRoot;
    private final Classes heads;
    private final BitSet[] group;
    private final int[] waitsFor;

    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    private final List<Moat> moats = new ArrayList<>();
    private long width;

    /** @param order all leaves, those round which to dig first coming first */
    Ascent(Core core, int grade, int[] order) {
        this.core = core;
        root = core.root();
        leaves = leavesOf(core, root, grade);
        toll = tolls(core, grade);
        labels = new Labels(core.nodes());
        landing = new long[core.leaves()][];
        isRoot = new boolean[core.nodes()];
        heads = new Classes(core.leaves());
        group = new BitSet[core.leaves()];
        waitsFor = new int[core.leaves()];
        for (int leaf = 0; leaf < landing.length; leaf++) {
            Leaf at = core.leaf(leaf);
            landing[leaf] = new long[at.size()];
            for (int i = 0; i < at.size(); i++) {
                landing[leaf][i] = grade == 0 ? at.cost(i).weight() : 0;
            }
        }
        for (int i = 0; i < core.leaf(root).size(); i++) {
            isRoot[core.leaf(root).node(i)] = true;
        }
        dig(order);
    }

    private static BitSet leavesOf(Core core, int root, int grade) {
        BitSet leaves = new BitSet();
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            leaves.set(leaf, leaf != root && core.need().floorOfPair(leaf, root) >= grade);
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
        return width;
    }

    /** The moats by themselves; none where sides are no numbers. */
    List<Moat> moats() {
        return moats;
    }

    private void dig(int[] order) {
        Arrays.setAll(group, Ascent::alone);
        Arrays.fill(waitsFor, NOTHING);
        BitSet open = (BitSet) leaves.clone();
        while (!open.isEmpty()) {
            int head = first(order, open);
            int met = digRound(group[head], leaves);
            open.clear(head);
            if (met >= 0) {
                waitsFor[head] = met;
                if (isCircle(head)) {
                    open.set(joinCircle(head));
                }
            }
        }
        // Leaves with a choice of landings are met where nothing can go on from; what waits for them is not done.
        leaves.stream().filter(this::waitsForChoice).forEach(leaf -> digRound(alone(leaf), new BitSet()));
    }

    private boolean waitsForChoice(int leaf) {
        BitSet met = new BitSet();
        int head = heads.find(leaf);
        met.or(group[head]);
        while (waitsFor[head] >= 0) {
            head = heads.find(waitsFor[head]);
            met.or(group[head]);
        }
        met.clear(leaf);
        return met.stream().anyMatch(other -> landing[other].length > 1);
    }

    private static BitSet alone(int leaf) {
        BitSet set = new BitSet();
        set.set(leaf);
        return set;
    }

    private static int first(int[] order, BitSet open) {
        int i = 0;
        while (!open.get(order[i])) {
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
        BitSet together = (BitSet) group[head].clone();
        for (int at = heads.find(waitsFor[head]); at != head; at = heads.find(waitsFor[at])) {
            together.or(group[at]);
        }
        together.stream().forEach(leaf -> heads.join(head, leaf));
        int newHead = heads.find(head);
        group[newHead] = together;
        waitsFor[newHead] = NOTHING;
        return newHead;
    }

    /**
     * Digs round some leaves until one of the others that stop it, which is returned, or the root or nothing is met.
     */
    private int digRound(BitSet inside, BitSet stopping) {
        labels.clear();
        heap.clear();
        for (int leaf = inside.nextSetBit(0); leaf >= 0; leaf = inside.nextSetBit(leaf + 1)) {
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
            int met = firstAt(node, stopping, inside);
            if (isRoot[node] || met >= 0) {
                fill(inside, far);
                return isRoot[node] ? NOTHING : met;
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

    private int firstAt(int node, BitSet stopping, BitSet inside) {
        LandingIndex at = core.landings();
        for (int i = at.first(node); i < at.first(node + 1); i++) {
            if (stopping.get(at.leaf(i)) && !inside.get(at.leaf(i))) {
                return at.leaf(i);
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
    private void fill(BitSet inside, long far) {
        if (far == 0) {
            return;
        }
        width += far;
        for (int leaf = inside.nextSetBit(0); leaf >= 0; leaf = inside.nextSetBit(leaf + 1)) {
            for (int i = 0; i < landing[leaf].length; i++) {
                landing[leaf][i] -= Math.min(far, labels.weight(core.leaf(leaf).node(i)));
            }
        }
        for (int i = 0; i < labels.touchedCount(); i++) {
            int node = labels.touched(i);
            if (isWithin(node, far)) {
                lower(node, far);
            }
        }
        if (core.need().isNarrow()) {
            moats.add(moat(inside, far));
        }
    }

    private boolean isWithin(int node, long far) {
        return labels.weight(node) < far && labels.isSettled(node);
    }

    private void lower(int node, long far) {
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            if (toll[arc] >= 0) {
                toll[arc] -= Math.max(0, Math.min(far, labels.weight(core.arcEnd(arc))) - labels.weight(node));
            }
        }
    }

    private Moat moat(BitSet inside, long far) {
        long[] depth = new long[core.nodes()];
        for (int i = 0; i < labels.touchedCount(); i++) {
            int node = labels.touched(i);
            depth[node] = isWithin(node, far) ? far - labels.weight(node) : 0;
        }
        return new Moat((int) inside.toLongArray()[0], far, depth);
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

    /** By node: tolls left, at least, on the way of any tree from the root to the node at this grade. */
    long[] waysFromRoot() {
        return spread(true);
    }

    private long[] spread(boolean fromRoot) {
        labels.clear();
        heap.clear();
        for (int leaf = 0; leaf < landing.length; leaf++) {
            boolean isSource = fromRoot ? leaf == root : leaves.get(leaf);
            for (int i = 0; i < landing[leaf].length && isSource; i++) {
                offer(core.leaf(leaf).node(i), fromRoot ? 0 : landing[leaf][i]);
            }
        }
        long[] far = new long[core.nodes()];
        Arrays.fill(far, NO_WAY);
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
