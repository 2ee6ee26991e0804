package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;

/**
 * Tells when the nodes at which a side can hang at some cost part the leaves that matter from each other, after which
 * hanging the side at a higher cost is no use.
 *
 * <p>Why. Let the side I hang at node v in a least tree, and let A be the leaves {@link CoreNeed#within} reach of I.
 * The rest of the tree has a connected piece S in which v lies and on which all of A hang, such that I may be hung
 * anywhere in S without any stretch needing more than before. If every node of S were one at which I hangs at a cost
 * above a, then S would be a connected set among those nodes, on which all of A hang. So when no connected piece of the
 * nodes of cost above a (or unknown) touches a landing of each leaf of A, S has a node u of cost at most a, and hanging
 * I at u, which makes one tap more at most, is cheaper than at v whenever v costs more than a and a tap weighs: such a
 * v is in no least tree. Costs are compared here by weight and length, without the number of taps.
 *
 * <p>The idea with one size, for single landings: Iwata and Shigemura, "Separator-based pruned dynamic programming for
 * Steiner tree", AAAI 2019, read about. Needs by pairs and by sides, landings to choose from and the proof are our own.
 *
 * <p>How. A connected set of unsettled nodes that touches one landing of each leaf of A is kept as a witness. Nodes are
 * told as they are settled, cheapest first; one of the witness is bypassed by a search from its neighbours in the
 * witness at the same time, which ends when they meet or when one of them has nowhere to go.
 */
final class Separator {

    private final Core core;
    private final Labels labels;
    private final int[] member;
    private final int[] link;
    private final int[] touches;
    private final int[] touchRound;
    private final Bypass bypass;
    private final Flood flood;
    private final Map<Source, Flood.Ways> dryWays = new HashMap<>();
    private long within;
    private int[] needed = new int[0];
    private BitSet closed = new BitSet();
    private int now;

    private record Source(int node, int grade) {}

    Separator(Core core, Labels labels) {
        this.core = core;
        this.labels = labels;
        member = new int[core.nodes()];
        link = new int[core.edges()];
        touches = new int[core.nodes()];
        touchRound = new int[core.nodes()];
        bypass = new Bypass(core, labels, this);
        flood = new Flood(core);
    }

    /** Starts with nothing settled; returns whether the leaves that matter can be joined at all. */
    boolean begin(long leavesWithin, int grade) {
        within = leavesWithin;
        needed = new int[Long.bitCount(within)];
        int count = 0;
        for (long left = within; left != 0; left &= left - 1) {
            needed[count++] = Long.numberOfTrailingZeros(left);
        }
        closed = core.closed(grade);
        int middle = core.leaf(core.root()).node(0);
        if (joinsAll(middle, dryWays(middle, grade))) {
            return true;
        }
        Leaf first = fewestLandings();
        for (int i = 0; i < first.size(); i++) {
            if (joinsAll(first.node(i), dryWays(first.node(i), grade))) {
                return true;
            }
        }
        return false;
    }

    /** A node has been settled; returns whether the others still join the leaves that matter. */
    boolean settle(int node) {
        if (member[node] != now) {
            return true;
        }
        if (touchesAt(node) > 0) {
            return rebuild();
        }
        return bypass.around(node) || (isChoiceLeft() && rebuild());
    }

    /** With one landing for each leaf a failed bypass is final. */
    private boolean isChoiceLeft() {
        return Arrays.stream(needed).anyMatch(leaf -> core.leaf(leaf).size() > 1);
    }

    private Leaf fewestLandings() {
        Leaf fewest = core.leaf(needed[0]);
        for (int leaf : needed) {
            fewest = core.leaf(leaf).size() < fewest.size() ? core.leaf(leaf) : fewest;
        }
        return fewest;
    }

    /** Where nothing is settled yet the same ways serve again and again. */
    private Flood.Ways dryWays(int start, int grade) {
        return dryWays.computeIfAbsent(
                new Source(start, grade),
                source -> flood.from(start, core.closed(grade), node -> false, core.everything()));
    }

    /** A new witness from scratch: in the piece of some landing of a leaf. */
    private boolean rebuild() {
        for (int leaf : needed) {
            if (!canLand(core.leaf(leaf))) {
                return false;
            }
        }
        Leaf first = fewestLandings();
        boolean isFirst = true;
        for (int i = 0; i < first.size(); i++) {
            int start = first.node(i);
            if (!labels.isSettled(start) && (isFirst || !flood.reached(start))) {
                isFirst = false;
                if (joinsAll(start, flood.from(start, closed, labels::isSettled, within))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean canLand(Leaf leaf) {
        for (int i = 0; i < leaf.size(); i++) {
            if (!labels.isSettled(leaf.node(i))) {
                return true;
            }
        }
        return false;
    }

    private boolean joinsAll(int start, Flood.Ways ways) {
        now++;
        enter(start);
        for (int leaf : needed) {
            int touch = ways.touch(leaf);
            if (touch < 0) {
                return false;
            }
            for (int arc : ways.arcs(leaf)) {
                enter(core.arcEnd(arc));
                link(core.arcEdge(arc));
            }
            touches[touch] = touchesAt(touch) + 1;
            touchRound[touch] = now;
        }
        return true;
    }

    /** Number of leaves that the witness touches at a node. */
    int touchesAt(int node) {
        return touchRound[node] == now ? touches[node] : 0;
    }

    int needed() {
        return needed.length;
    }

    boolean isOpen(int arc) {
        return !closed.get(arc);
    }

    void enter(int node) {
        member[node] = now;
    }

    void link(int edge) {
        link[edge] = now;
    }

    void unlink(int edge) {
        link[edge] = 0;
    }

    boolean isLinked(int edge) {
        return link[edge] == now;
    }
}
