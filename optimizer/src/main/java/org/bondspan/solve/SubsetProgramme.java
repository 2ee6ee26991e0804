package org.bondspan.solve;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.LongStream;

/**
 * Send-and-split dynamic programming over sets of leaves: the least cost f(I, v) at which the leaves I can be linked to
 * node v, for one set after the other.
 *
 * <ul>
 *   <li>land: a single leaf, at what landing on v costs;
 *   <li>split: f(J, v) + f(I - J, v), and a tap unless v is metal;
 *   <li>send: from a neighbour of v along a stretch at the grade of the cut around I, which is what this stretch needs
 *       whatever the rest of the tree looks like (Dijkstra's algorithm for each I).
 * </ul>
 *
 * <p>One leaf, the root, stays outside; the answer is the least f(everyone else, v) plus the root's landing on v. Where
 * k conductors meet at a node there are k - 2 splits, the root's landing being one of the conductors, so taps come out
 * right.
 *
 * <p>Time 3^k n + 2^k n log n for k leaves and n nodes at worst. Only sets with states are joined, so that what
 * {@link Separator} and {@link Bound} discard is not looked at again. Sources, read about: Dreyfus and Wagner, Networks
 * 1, 1971; Erickson, Monma and Veinott, Mathematics of Operations Research 12(4), 1987.
 */
final class SubsetProgramme {

    // More fields than house style allows: these are the working arrays of one search.
    private final Core core;
    private final int root;
    private final Restriction restriction;
    private final Optional<Bound> bound;
    private final Optional<Separator> separator;
    private final Meter meter;
    private long held;
    private final Labels labels;
    private final KeyHeap heap = new KeyHeap();
    private final Map<Long, States> states = new LinkedHashMap<>();
    private final Map<Long, LongStream.Builder> splits = new HashMap<>();
    private final PriorityQueue<Long> open = new PriorityQueue<>();
    private long[] stored = new long[64];
    private int storedCount;
    private int[] kept = new int[64];
    private int keptCount;

    SubsetProgramme(Core core, boolean separators, Optional<Bound> bound, Restriction restriction, Meter meter) {
        this.core = core;
        this.bound = bound;
        this.restriction = restriction;
        this.meter = meter;
        root = core.root();
        labels = new Labels(core.nodes());
        separator = separators ? Optional.of(new Separator(core, labels)) : Optional.empty();
    }

    /**
     * Runs through all sets; returns a least draft unless there is none within the bound.
     *
     * @throws SpentException when that takes more than the meter allows
     */
    Optional<Draft> findDraft() {
        try {
            return findDraftWithin();
        } finally {
            meter.release(held);
        }
    }

    private Optional<Draft> findDraftWithin() {
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            if (leaf != root) {
                open.add(1L << leaf);
            }
        }
        while (!open.isEmpty()) {
            long side = open.remove();
            labels.clear();
            start(side);
            send(side);
            if (keptCount > 0) {
                long bytes = States.bytes(kept, keptCount);
                held += bytes;
                meter.hold(bytes);
                store(side, new States(kept, keptCount, labels));
            }
        }
        return findAnswer();
    }

    private void start(long side) {
        if (Long.bitCount(side) == 1) {
            Leaf leaf = core.leaf(Long.numberOfTrailingZeros(side));
            for (int i = 0; i < leaf.size(); i++) {
                labels.offer(leaf.node(i), leaf.cost(i).weight(), leaf.cost(i).extent(), -1);
            }
            return;
        }
        LongStream.Builder parts = splits.remove(side);
        if (parts != null) {
            parts.build().forEach(part -> {
                States one = statesOf(part);
                meter.spend(1 + one.size() / 4);
                one.join(statesOf(side & ~part), core, labels);
            });
        }
    }

    private void store(long side, States found) {
        meter.spend(1 + storedCount / 16);
        for (int i = 0; i < storedCount; i++) {
            long other = stored[i];
            if ((other & side) == 0 && statesOf(other).meets(found)) {
                splits.computeIfAbsent(side | other, this::open).add(side);
            }
        }
        states.put(side, found);
        if (storedCount == stored.length) {
            stored = Arrays.copyOf(stored, 2 * storedCount);
        }
        stored[storedCount++] = side;
    }

    private LongStream.Builder open(long union) {
        open.add(union);
        return LongStream.builder();
    }

    private void send(long side) {
        keptCount = 0;
        heap.clear();
        bound.ifPresent(b -> b.begin(side));
        for (int i = 0; i < labels.touchedCount(); i++) {
            int node = labels.touched(i);
            if (isWithinBound(labels.weight(node), node)) {
                heap.add(labels.weight(node), labels.extent(node), node);
            }
        }
        long within = separator.isPresent() ? core.need().within(side) : 0;
        if (within == 0) {
            settle(side, Optional.empty());
        } else if (separator.orElseThrow().begin(within, core.need().withinGrade(side))) {
            settle(side, separator);
        }
    }

    private void settle(long side, Optional<Separator> parting) {
        int grade = core.need().grade(side);
        boolean isFree = restriction.isNone();
        boolean parted = false;
        long partedWeight = Long.MAX_VALUE;
        long partedLength = Long.MAX_VALUE;
        while (!heap.isEmpty()) {
            int node = heap.leastNode();
            long weight = heap.leastWeight();
            long extent = heap.leastExtent();
            heap.removeLeast();
            if (labels.isSettled(node)) {
                continue;
            }
            if (weight > partedWeight || (weight == partedWeight && extent / Cost.TAPS > partedLength)) {
                return;
            }
            labels.settle(node);
            meter.spend(1);
            if (!parted && parting.isPresent() && !parting.get().settle(node)) {
                parted = true;
                partedWeight = weight + core.tapWeight();
                partedLength = extent / Cost.TAPS;
            }
            keep(node);
            if (isFree || restriction.allows(node, side)) {
                relax(node, weight, extent, grade);
            }
        }
    }

    private boolean isWithinBound(long weight, int node) {
        return bound.isEmpty() || !bound.get().isBeyond(weight, node);
    }

    private void keep(int node) {
        if (keptCount == kept.length) {
            kept = Arrays.copyOf(kept, 2 * keptCount);
        }
        kept[keptCount++] = node;
    }

    /** What is beyond the bound is not reached at all: a {@link Separator} takes it as unsettled, parting no sooner. */
    private void relax(int node, long weight, long extent, int grade) {
        long[] weights = core.weights(grade);
        long[] extents = core.extents(grade);
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            int end = core.arcEnd(arc);
            int kind = core.kind(arc);
            long w = weight + weights[kind];
            long x = extent + extents[kind];
            if (weights[kind] >= 0 && labels.isBetter(end, w, x) && isWithinBound(w, end)) {
                labels.offer(end, w, x, arc);
                heap.add(w, x, end);
            }
        }
    }

    private Optional<Draft> findAnswer() {
        long others = core.everything() & ~(1L << root);
        States last = states.get(others);
        int best = -1;
        Cost least = Cost.UNKNOWN;
        Leaf leaf = core.leaf(root);
        for (int i = 0; i < leaf.size() && last != null; i++) {
            int place = last.find(leaf.node(i));
            if (place >= 0 && restriction.allows(leaf.node(i), others)) {
                Cost cost = new Cost(last.weight(place), last.extent(place)).plus(leaf.cost(i));
                if (cost.compareTo(least) < 0) {
                    least = cost;
                    best = leaf.node(i);
                }
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(new Trace(core, states, least).follow(root, others, best));
    }

    private States statesOf(long side) {
        States found = states.get(side);
        if (found == null) {
            throw new IllegalStateException("no states of side " + Long.toBinaryString(side));
        }
        return found;
    }
}
