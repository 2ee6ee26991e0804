package org.bondspan.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Tells which states cannot be part of a tree as light as a known one.
 *
 * <p>A side that hangs at a node still has to be linked with every leaf outside. What is missing, directed away from
 * the root, enters all cuts round the leaves outside, and all cuts with leaves of the side alone in which the node
 * lies: inside such a cut is something, the side itself, that needs the grade of this cut. It contains the way from the
 * root to the node, every stretch of which has at least the grade of {@link CoreNeed#floor}, and so pays, on top of the
 * cuts that it enters, the tolls left on it at this grade and at all below. It also has to land the root.
 */
final class Bound {

    private final Core core;
    private final List<Moat> moats;
    private final long[][] waysFromRoot;
    private final long rootLanding;
    private long known;
    private long outside;
    private Moat[] inside = new Moat[0];
    private long[] wayFromRoot = new long[0];
    /** By node, as far as it has been asked for: what a tree weighs at least beyond the side that hangs there. */
    private final long[] rest;

    private final int[] roundOfRest;
    private int round;

    /**
     * @param waysFromRoot by grade and node: tolls left, at least, on the way from the root, of this grade and of all
     *     below
     * @param rootLanding least weight for landing the root
     * @param known weight of the known tree
     */
    Bound(Core core, List<Moat> moats, long[][] waysFromRoot, long rootLanding, long known) {
        this.core = core;
        this.moats = moats;
        this.waysFromRoot = waysFromRoot;
        this.rootLanding = rootLanding;
        this.known = known;
        rest = new long[core.nodes()];
        roundOfRest = new int[core.nodes()];
    }

    /** A better tree is known. */
    void limitTo(long knownWeight) {
        known = knownWeight;
    }

    /** Prepares for states of one side, which is without the root. */
    void begin(long side) {
        round++;
        wayFromRoot = waysFromRoot[core.need().floor(side, core.root())];
        outside = rootLanding;
        List<Moat> within = new ArrayList<>();
        for (Moat moat : moats) {
            if ((moat.leaves() & ~side) != 0) {
                outside += moat.width();
            } else {
                within.add(moat);
            }
        }
        inside = within.toArray(Moat[]::new);
    }

    /** Whether a side that hangs at a node at this weight is in no tree as light as the known one. */
    boolean isBeyond(long weight, int node) {
        if (roundOfRest[node] != round) {
            roundOfRest[node] = round;
            rest[node] = restAt(node);
        }
        return weight + rest[node] > known;
    }

    private long restAt(int node) {
        long least = outside + wayFromRoot[node];
        for (Moat moat : inside) {
            least += moat.depth(node);
        }
        return least;
    }
}
