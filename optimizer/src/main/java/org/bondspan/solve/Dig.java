package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * What has been dug round a group of leaves at one grade: the nodes to which all tolls are used up. As tolls only fall
 * it only grows, so that each round of {@link Ascent} goes on from its rim, the nodes from which something leads out.
 */
final class Dig {

    private static final int NOTHING = -1;

    private final Core core;
    private final BitSet leaves;
    private final BitSet nodes;
    private final int[] landingsMet;
    /** The nodes that were dug here, one after the other, and how far the leaves were when each was reached. */
    private int[] reached = new int[64];

    private long[] far = new long[64];
    private int reachedCount;

    private int[] rim = new int[64];
    private int rimCount;
    private long width;

    /** Nothing has been dug. */
    Dig(Core core, BitSet leaves) {
        this.core = core;
        this.leaves = leaves;
        nodes = new BitSet(core.nodes());
        landingsMet = new int[core.leaves()];
    }

    /** Round all leaves of some groups nothing has been dug, but what was round each of them is dug. */
    static Dig joined(Core core, List<Dig> groups) {
        Dig all = new Dig(core, new BitSet());
        for (Dig group : groups) {
            for (int i = 0; i < group.rimCount; i++) {
                // What is dug already and not on that rim is inside it.
                if (!all.has(group.rim[i])) {
                    all.addToRim(group.rim[i]);
                }
            }
            all.leaves.or(group.leaves);
            all.nodes.or(group.nodes);
        }
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            for (int i = 0; i < core.leaf(leaf).size(); i++) {
                all.landingsMet[leaf] += all.has(core.leaf(leaf).node(i)) ? 1 : 0;
            }
        }
        return all;
    }

    /** Leaves round which is dug. Not to be changed. */
    BitSet leaves() {
        return leaves;
    }

    boolean has(int node) {
        return nodes.get(node);
    }

    int rimCount() {
        return rimCount;
    }

    /** A node of the rim. */
    int rim(int i) {
        return rim[i];
    }

    /** Keeps those of the rim from which something still leads out. */
    void trimRim(IntPredicate leadsOut) {
        int kept = 0;
        for (int i = 0; i < rimCount; i++) {
            if (leadsOut.test(rim[i])) {
                rim[kept++] = rim[i];
            }
        }
        rimCount = kept;
    }

    private void addToRim(int node) {
        if (rimCount == rim.length) {
            rim = Arrays.copyOf(rim, 2 * rimCount);
        }
        rim[rimCount++] = node;
    }

    /** Counts the landings at a node; returns a leaf of some, outside, all landings of which have been met now. */
    int meet(int node, BitSet some) {
        LandingIndex at = core.landings();
        int met = NOTHING;
        for (int i = at.first(node); i < at.first(node + 1); i++) {
            landingsMet[at.leaf(i)]++;
            if (met < 0 && isMet(at.leaf(i), some)) {
                met = at.leaf(i);
            }
        }
        return met;
    }

    /** A leaf of some, outside, all landings of which are dug, or -1. */
    int findMet(BitSet some) {
        return some.stream().filter(leaf -> isMet(leaf, some)).findFirst().orElse(NOTHING);
    }

    private boolean isMet(int leaf, BitSet some) {
        return landingsMet[leaf] == core.leaf(leaf).size() && some.get(leaf) && !leaves.get(leaf);
    }

    /** Cuts from distance 0 up to a distance have been dug; what was settled on the way is dug now. */
    void widen(Labels distance, long by) {
        for (int i = 0; i < distance.touchedCount(); i++) {
            int node = distance.touched(i);
            if (distance.isSettled(node)) {
                nodes.set(node);
                addToRim(node);
                if (reachedCount == reached.length) {
                    reached = Arrays.copyOf(reached, 2 * reachedCount);
                    far = Arrays.copyOf(far, 2 * reachedCount);
                }
                reached[reachedCount] = node;
                far[reachedCount++] = width + distance.weight(node);
            }
        }
        width += by;
    }

    /** The cuts dug round these leaves, of which there must be few enough for sides to be numbers. */
    Moat moat() {
        long[] depth = new long[core.nodes()];
        Arrays.fill(depth, width);
        for (int i = 0; i < reachedCount; i++) {
            depth[reached[i]] = width - far[i];
        }
        return new Moat(leaves.toLongArray()[0], width, (BitSet) nodes.clone(), node -> depth[node]);
    }
}
