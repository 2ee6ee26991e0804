package org.bondspan.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Where copper may go, at what weight, and what must be connected: a graph in integers, frozen. Immutable.
 *
 * <p>Sizes are ranks, 0 the smallest. A tree is bought stretch by stretch: an edge that parts the terminals into two
 * sides needs the rank that the {@link CutNeed} gives for them, and is bought at that rank or at a larger one where
 * that is cheaper (or the only one allowed). A terminal is a leaf: it hangs on one node by one of its attachments, is
 * never passed through, and the attachment is paid at the rank of the cut around this terminal alone.
 *
 * <p>Where a tap has a weight of its own, that of all taps is part of the weight.
 *
 * <p>Least means least total weight, then least total length of what is not free, then fewest taps.
 *
 * <p>Nodes joined by an edge that is free at every rank (its weight is 0 at the largest rank) lie together: they are
 * one spot, of metal if any of them is metal. A tree meets a spot once, and goes about inside it for nothing. At a spot
 * that is no metal, k conductors (edges, bought or free, and attachments) that meet make k - 2 taps when k is 3 or
 * more; on metal each conductor lands on the metal itself and there are no taps.
 */
public final class RoutingProblem {

    /** In a tariff: this rank may not be used. */
    public static final long FORBIDDEN = -1;

    /** Most terminals that a side given as a number can hold. */
    static final int MOST_IN_A_LONG = 63;

    /** Most terminals, because of how taps are counted in a {@link Cost}. */
    static final int MOST_TERMINALS = 1000;

    private final int ranks;
    private final boolean[] metal;
    private final Links edges;
    private final List<Links> attachments;
    private final Tariffs tariffs;
    private final CutNeed need;
    private final long tapWeight;

    private RoutingProblem(Builder builder, CutNeed need) {
        ranks = builder.ranks;
        metal = new boolean[builder.metal.size()];
        for (int v = 0; v < metal.length; v++) {
            metal[v] = builder.metal.get(v);
        }
        edges = builder.edges.copy();
        attachments = builder.attachments.stream().map(Links::copy).toList();
        tariffs = new Tariffs(builder.ranks, builder.tariffs);
        this.need = need;
        tapWeight = builder.tapWeight;
        new SizeCheck(this).run();
    }

    /** Starts a problem with sizes 0 .. ranks - 1. */
    public static Builder builder(int ranks) {
        return new Builder(ranks);
    }

    public int ranks() {
        return ranks;
    }

    public int nodeCount() {
        return metal.length;
    }

    public int edgeCount() {
        return edges.size();
    }

    public int terminalCount() {
        return attachments.size();
    }

    public CutNeed need() {
        return need;
    }

    /** Weight of one tap. */
    public long tapWeight() {
        return tapWeight;
    }

    public boolean isMetal(int node) {
        return metal[node];
    }

    /** One end of an edge. */
    public int from(int edge) {
        return edges.a(edge);
    }

    /** The other end of an edge. */
    public int to(int edge) {
        return edges.b(edge);
    }

    public long length(int edge) {
        return edges.length(edge);
    }

    /** Node on which a terminal lands by one of its attachments. */
    public int attachmentNode(int terminal, int attachment) {
        return attachments.get(terminal).b(attachment);
    }

    Links edges() {
        return edges;
    }

    Links attachments(int terminal) {
        return attachments.get(terminal);
    }

    Tariffs tariffs() {
        return tariffs;
    }

    /** Collects a problem. Nodes, edges, tariffs and terminals are numbered from 0 in order of adding. */
    public static final class Builder {

        private final int ranks;
        private final List<Boolean> metal = new ArrayList<>();
        private final List<long[]> tariffs = new ArrayList<>();
        private final Links edges = new Links();
        private final List<Links> attachments = new ArrayList<>();
        private long tapWeight;

        private Builder(int ranks) {
            if (ranks < 1) {
                throw new IllegalArgumentException("a problem has at least one rank, not " + ranks);
            }
            this.ranks = ranks;
        }

        /** A place where copper may be tapped: a split here is a tap. */
        public int addPlace() {
            metal.add(false);
            return metal.size() - 1;
        }

        /** Several places with consecutive numbers; returns the first. */
        public int addPlaces(int count) {
            int first = metal.size();
            for (int i = 0; i < count; i++) {
                addPlace();
            }
            return first;
        }

        /** A node of metal that carries, such as a frame, a pipe or a ring: a split here is no tap. */
        public int addMetal() {
            metal.add(true);
            return metal.size() - 1;
        }

        /**
         * A tariff: weight per unit of length at each rank, {@link #FORBIDDEN} where the rank may not be used. What
         * weighs nothing adds no length either.
         */
        public int addTariff(long... weightPerUnitByRank) {
            if (weightPerUnitByRank.length != ranks) {
                throw new IllegalArgumentException(
                        "a tariff has " + ranks + " weights, not " + weightPerUnitByRank.length);
            }
            for (long weight : weightPerUnitByRank) {
                if (weight < FORBIDDEN) {
                    throw new IllegalArgumentException("a weight per unit cannot be " + weight);
                }
            }
            tariffs.add(weightPerUnitByRank.clone());
            return tariffs.size() - 1;
        }

        /** An undirected edge; returns its index. Parallel edges and loops are allowed. */
        public int addEdge(int a, int b, long length, int tariff) {
            checkNode(a);
            checkNode(b);
            checkStretch(length, tariff);
            return edges.add(a, b, length, tariff);
        }

        /** Gives every tap a weight; without it taps weigh nothing. */
        public void weighTaps(long weight) {
            if (weight < 0) {
                throw new IllegalArgumentException("a tap cannot weigh " + weight);
            }
            tapWeight = weight;
        }

        /** Something that must be connected. It is a leaf and no node. */
        public int addTerminal() {
            if (attachments.size() == MOST_TERMINALS) {
                throw new IllegalArgumentException("more than " + MOST_TERMINALS + " terminals");
            }
            attachments.add(new Links());
            return attachments.size() - 1;
        }

        /** One way to land a terminal; the ways are numbered per terminal in order of adding. */
        public void attach(int terminal, int node, long length, int tariff) {
            if (terminal < 0 || terminal >= attachments.size()) {
                throw new IllegalArgumentException("no terminal " + terminal);
            }
            checkNode(node);
            checkStretch(length, tariff);
            attachments.get(terminal).add(terminal, node, length, tariff);
        }

        /**
         * Freezes what was collected.
         *
         * @throws IllegalArgumentException when the need was made for another number of terminals, or has ranks beyond
         *     those of the problem (of a need by sides only the cuts around one terminal are tried here)
         * @throws ArithmeticException when the weights or lengths are so large that a sum could overflow
         */
        public RoutingProblem build(CutNeed need) {
            return new RoutingProblem(this, need);
        }

        private void checkNode(int node) {
            if (node < 0 || node >= metal.size()) {
                throw new IllegalArgumentException("no node " + node);
            }
        }

        private void checkStretch(long length, int tariff) {
            if (length < 0) {
                throw new IllegalArgumentException("a length cannot be " + length);
            }
            if (tariff < 0 || tariff >= tariffs.size()) {
                throw new IllegalArgumentException("no tariff " + tariff);
            }
        }
    }
}
