package org.bondspan.solve;

import java.util.Arrays;

/**
 * A tree that connects every terminal of a {@link RoutingProblem}. Edges and attachments carry the rank at which they
 * are bought, which is the rank needed or a larger one that is cheaper there. Immutable.
 */
public final class Tree {

    private final int[] edges;
    private final int[] edgeRanks;
    private final int[] attachments;
    private final int[] attachmentRanks;
    private final Cost cost;

    /** The arrays become the tree's own. Edges in ascending order. */
    Tree(int[] edges, int[] edgeRanks, int[] attachments, int[] attachmentRanks, Cost cost) {
        this.edges = edges;
        this.edgeRanks = edgeRanks;
        this.attachments = attachments;
        this.attachmentRanks = attachmentRanks;
        this.cost = cost;
    }

    /** The tree of a problem in which there is nothing to connect. */
    static Tree empty(int terminals) {
        int[] none = new int[terminals];
        Arrays.fill(none, -1);
        return new Tree(new int[0], new int[0], none, none.clone(), Cost.NOTHING);
    }

    /** Number of edges, free ones among them. */
    public int edgeCount() {
        return edges.length;
    }

    /** Index in the problem of the i-th edge of the tree; they come in ascending order. */
    public int edge(int i) {
        return edges[i];
    }

    /** Rank at which the i-th edge of the tree is bought, or used where it is free. */
    public int edgeRank(int i) {
        return edgeRanks[i];
    }

    /** Indices in the problem of all edges, ascending; a copy. */
    public int[] edges() {
        return edges.clone();
    }

    /** Number of the attachment chosen for a terminal, counted as added; -1 where there is nothing to connect to. */
    public int attachment(int terminal) {
        return attachments[terminal];
    }

    /** Rank at which the attachment of a terminal is bought; -1 where there is none. */
    public int attachmentRank(int terminal) {
        return attachmentRanks[terminal];
    }

    /** Total weight, in the units of the tariffs times the units of length. */
    public long weight() {
        return cost.weight();
    }

    /** Total length of what is not free. */
    public long length() {
        return cost.length();
    }

    Cost cost() {
        return cost;
    }

    /** Number of taps, as {@link RoutingProblem} counts them. */
    public int taps() {
        return cost.taps();
    }

    /** All edges with their ranks, then the attachments with theirs. */
    @Override
    public String toString() {
        return "weight " + weight() + ", length " + length() + ", taps " + taps() + ", edges " + Arrays.toString(edges)
                + " at ranks " + Arrays.toString(edgeRanks) + ", attachments " + Arrays.toString(attachments)
                + " at ranks " + Arrays.toString(attachmentRanks);
    }
}
