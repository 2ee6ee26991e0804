package org.bondspan.solve;

import java.util.Arrays;

/**
 * Tells which states cannot be part of a tree as good as a known one.
 *
 * <p>A side that hangs at a node still has to be linked to each leaf outside, by stretches that all need at least
 * {@link CoreNeed#floor}. So what is missing costs at least the way to the farthest leaf. It also costs at least half
 * of a round tour through the node and the leaves outside, because going round a tree along both sides of every stretch
 * is a tour of twice its cost; and a tour is at least a least spanning tree of the leaves and the two shortest ways
 * from the node. (Half-tour bound, as read about in Hougardy, Silvanus, Vygen, "Dijkstra meets Steiner", Math.
 * Programming Computation 2017.) Everything is compared doubled, so nothing is rounded, and without taps.
 */
final class Bound {

    private final Core core;
    private final Distances distances;
    private final long knownWeight;
    private final long knownLength;
    private int outside;
    private final long[][] weights;
    private final long[][] extents;
    private Cost spanning = Cost.NOTHING;

    Bound(Core core, Distances distances, Cost known) {
        this.core = core;
        this.distances = distances;
        knownWeight = known.weight();
        knownLength = known.length();
        weights = new long[core.leaves()][];
        extents = new long[core.leaves()][];
    }

    /** Prepares for states of one side. */
    void begin(int side) {
        int[] left = new int[core.leaves()];
        outside = 0;
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            if ((side >>> leaf & 1) == 0) {
                int floor = core.need().floor(side, leaf);
                weights[outside] = distances.weights(leaf, floor);
                extents[outside] = distances.extents(leaf, floor);
                left[outside++] = leaf;
            }
        }
        spanning = spanningTree(Arrays.copyOf(left, outside));
    }

    /** Prim's algorithm. */
    private Cost spanningTree(int[] leaves) {
        boolean[] inTree = new boolean[leaves.length];
        Cost[] toTree = new Cost[leaves.length];
        Arrays.fill(toTree, Cost.UNKNOWN);
        Cost total = Cost.NOTHING;
        int last = 0;
        for (int count = 1; count < leaves.length; count++) {
            inTree[last] = true;
            int next = -1;
            for (int i = 1; i < leaves.length; i++) {
                if (!inTree[i]) {
                    Cost way = between(leaves[last], leaves[i]);
                    toTree[i] = way.compareTo(toTree[i]) < 0 ? way : toTree[i];
                    next = next < 0 || toTree[i].compareTo(toTree[next]) < 0 ? i : next;
                }
            }
            total = total.plus(toTree[next]);
            last = next;
        }
        return total;
    }

    private Cost between(int leaf, int otherLeaf) {
        return distances.between(leaf, otherLeaf, core.need().floor(1 << leaf, otherLeaf));
    }

    /** Whether a side that hangs at a node at this cost is in no tree as good as the known one. */
    boolean isBeyond(long weight, long extent, int node) {
        long near = Long.MAX_VALUE;
        long nearExtent = 0;
        long next = Long.MAX_VALUE;
        long nextExtent = 0;
        for (int i = 0; i < outside; i++) {
            long w = weights[i][node];
            long x = extents[i][node];
            if (exceeds(weight + w, extent + x, 1)) {
                return true;
            }
            if (w < near || (w == near && x < nearExtent)) {
                next = near;
                nextExtent = nearExtent;
                near = w;
                nearExtent = x;
            } else if (w < next || (w == next && x < nextExtent)) {
                next = w;
                nextExtent = x;
            }
        }
        return outside > 1
                && exceeds(
                        2 * weight + spanning.weight() + near + next,
                        2 * extent + spanning.extent() + nearExtent + nextExtent,
                        2);
    }

    private boolean exceeds(long weight, long extent, int times) {
        return weight > times * knownWeight
                || (weight == times * knownWeight && extent / Cost.TAPS > times * knownLength);
    }
}
