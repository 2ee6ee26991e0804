package org.bondspan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Dual ascent at one grade: moats are dug round leaves until each is linked with the root by arcs that are used up.
 * Every moat is a family of nested cuts, each of some width.
 *
 * <p>Every arc into a cut has a toll, at first what the edge costs at this grade more than at the grade below; a cut of
 * some width takes that much off the toll of every arc that enters it, and tolls stay at 0 or more. A tree, its edges
 * directed away from the root, enters each cut round a leaf at least once by an edge of at least the grade that this
 * leaf needs with the root. So the widths add up to a lower bound of what the tree pays at this grade, and the tolls
 * left on its arcs come on top. (R. T. Wong, "A dual ascent approach for Steiner tree problems on a directed graph",
 * Mathematical Programming 28, 1984, read about.)
 *
 * <p>A moat is dug by Dijkstra's algorithm on the tolls. The moat that the fewest arcs enter goes on first, and as long
 * as it does not outgrow the next one by much: a wide moat takes the toll of many arcs for one step of the bound. An
 * edge of a guide, which is a good tree, counts for several arcs, because a cut that a least tree enters twice is no
 * part of the best bound. A leaf that has met all landings of another waits for it, as it is linked with the root by
 * used-up arcs as soon as the other is; leaves that wait for each other in a circle go on as one. In which order moats
 * are dug, and how far, changes how good the bound is, and never whether it is one; so digging may end at any time.
 */
final class Ascent {

    private static final int NOTHING = -1;
    private static final int GOES_ON = -2;

    private static final int STEPS_BEFORE_FIRST_LOOK = 1 << 16;
    private static final int STEPS_BETWEEN_LOOKS = 1 << 12;

    /** For how many arcs an edge of the guide counts. */
    private static final int GUIDED = 10;

    private final Core core;
    private final BitSet guide;
    private final boolean isGuided;
    private final Meter meter;
    private int untilLook = STEPS_BEFORE_FIRST_LOOK;
    private boolean isOver;
    /** Leaves that need this grade with the root. */
    private final BitSet leaves;

    private final Tolls tolls;
    private final Waiting waiting;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    /** By head of a group; empty where there is none, or no more. */
    private final @Nullable Dig[] digs;

    private final List<Moat> moats = new ArrayList<>();
    private long arcsIn;
    private long width;

    /**
     * Digs until all is done, or the time is over and at least some thousands of steps are.
     *
     * @param guide edges of a good tree, or none
     */
    Ascent(Core core, int grade, BitSet guide, Meter meter) {
        this.core = core;
        this.guide = guide;
        isGuided = !guide.isEmpty();
        this.meter = meter;
        leaves = leavesOf(core, grade);
        labels = new Labels(core.nodes());
        tolls = new Tolls(core, grade, labels);
        waiting = new Waiting(core.leaves());
        digs = new Dig[core.leaves()];
        dig();
    }

    private static BitSet leavesOf(Core core, int grade) {
        BitSet leaves = new BitSet();
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            leaves.set(leaf, leaf != core.root() && core.need().floorOfPair(leaf, core.root()) >= grade);
        }
        return leaves;
    }

    /** Total width of the moats. */
    long width() {
        return width;
    }

    /** One moat for each set of leaves round which was dug; none where sides are no numbers. */
    List<Moat> moats() {
        return List.copyOf(moats);
    }

    /**
     * By node: tolls left on the cheapest way to it from the root, as far as they matter; see {@link Tolls#fromRoot}.
     */
    long[] fromRoot(long most) {
        return tolls.fromRoot(most);
    }

    /** By edge: tolls left, at least, on the way of any tree from the root through it to some leaf of this grade. */
    long[] detours() {
        return tolls.detours(leaves);
    }

    /** A group to go on with, and how many arcs entered its moat when it was last looked at. */
    private record Open(long arcsIn, int head) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            return arcsIn != other.arcsIn ? Long.compare(arcsIn, other.arcsIn) : Integer.compare(head, other.head);
        }
    }

    private void dig() {
        PriorityQueue<Open> open = new PriorityQueue<>();
        leaves.stream().forEach(leaf -> {
            digs[leaf] = new Dig(core, alone(leaf));
            open.add(new Open(0, leaf));
        });
        while (!open.isEmpty() && !isOver) {
            int head = open.remove().head;
            int met = digRound(digs[head], open.isEmpty() ? Long.MAX_VALUE : most(open.element()));
            if (met == GOES_ON) {
                open.add(new Open(arcsIn, head));
            } else if (met >= 0 && waiting.waitFor(head, met)) {
                open.add(new Open(0, join(waiting.circle(head))));
            }
        }
        leaves.stream().forEach(this::end);
    }

    private static BitSet alone(int leaf) {
        BitSet set = new BitSet();
        set.set(leaf);
        return set;
    }

    /** Half as many again as the next has, so that there are not too many turns. */
    private static long most(Open next) {
        return next.arcsIn + next.arcsIn / 2;
    }

    private int join(List<Integer> circle) {
        Dig joined = Dig.joined(core, circle.stream().map(head -> digs[head]).toList());
        circle.forEach(this::end);
        int head = waiting.join(circle);
        digs[head] = joined;
        return head;
    }

    /** Nothing more is dug round a group. */
    private void end(int head) {
        if (digs[head] != null && core.need().isNarrow()) {
            moats.add(digs[head].moat());
        }
        digs[head] = null;
    }

    /**
     * Digs round some leaves until all landings of another leaf, which is returned, or the root or nothing is met, or
     * until more arcs enter than allowed.
     */
    private int digRound(Dig dig, long mostArcs) {
        int metBefore = dig.findMet(leaves);
        if (metBefore >= 0) {
            return metBefore;
        }
        begin(dig);
        long now = 0;
        long rootFar = tolls.ofRoot(dig);
        while (!heap.isEmpty() && heap.leastWeight() < rootFar) {
            int node = heap.leastNode();
            long far = heap.leastWeight();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            if (far > now && (arcsIn > mostArcs || isOver)) {
                fill(dig, now);
                return GOES_ON;
            }
            now = far;
            labels.settle(node);
            int met = dig.meet(node, leaves);
            if (met >= 0) {
                fill(dig, far);
                return met;
            }
            if (tolls.mayRootLand(node)) {
                rootFar = Math.min(rootFar, far + tolls.ofRoot(node));
            }
            relax(dig, node, far);
            look();
        }
        if (rootFar < Long.MAX_VALUE) {
            fill(dig, rootFar);
        }
        return NOTHING;
    }

    private void begin(Dig dig) {
        labels.clear();
        heap.clear();
        arcsIn = 0;
        for (int leaf = dig.leaves().nextSetBit(0);
                leaf >= 0;
                leaf = dig.leaves().nextSetBit(leaf + 1)) {
            for (int i = 0; i < core.leaf(leaf).size(); i++) {
                if (!dig.has(core.leaf(leaf).node(i))) {
                    offer(core.leaf(leaf).node(i), tolls.ofLanding(leaf, i));
                }
            }
        }
        dig.trimRim(node -> relax(dig, node, 0));
    }

    /** Returns whether an arc comes to a node from outside of what is dug or settled. */
    private boolean relax(Dig dig, int node, long far) {
        boolean isOnRim = dig.has(node);
        boolean leadsOut = false;
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            if (tolls.of(arc) >= 0) {
                int end = core.arcEnd(arc);
                int share = isGuided && guide.get(core.arcEdge(arc)) ? GUIDED : 1;
                if (!dig.has(end) && !labels.isSettled(end)) {
                    leadsOut = true;
                    arcsIn += share;
                    offer(end, far + tolls.of(arc));
                } else if (!isOnRim) {
                    arcsIn -= share;
                }
            }
        }
        return leadsOut;
    }

    private void offer(int node, long far) {
        if (labels.offer(node, far, 0, -1)) {
            heap.add(far, 0, node);
        }
    }

    private void look() {
        if (--untilLook == 0) {
            untilLook = STEPS_BETWEEN_LOOKS;
            isOver = meter.isOver();
        }
    }

    private void fill(Dig dig, long far) {
        width += far;
        if (far > 0) {
            tolls.charge(dig, labels, far);
        }
        dig.widen(labels, far);
    }
}
