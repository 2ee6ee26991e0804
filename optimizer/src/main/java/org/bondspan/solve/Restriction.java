package org.bondspan.solve;

import org.jspecify.annotations.Nullable;

/**
 * Which sides may leave a node: of each node, leaves that must be behind whatever leaves it and leaves that must not.
 * Immutable.
 */
final class Restriction {

    private final int node;
    private final long must;
    private final long mustNot;
    private final @Nullable Restriction rest;

    private Restriction(int node, long must, long mustNot, @Nullable Restriction rest) {
        this.node = node;
        this.must = must;
        this.mustNot = mustNot;
        this.rest = rest;
    }

    static Restriction none() {
        return new Restriction(-1, 0, 0, null);
    }

    Restriction with(int atNode, int leaf) {
        return new Restriction(atNode, 1L << leaf, 0, this);
    }

    Restriction without(int atNode, int leaf) {
        return new Restriction(atNode, 0, 1L << leaf, this);
    }

    boolean isNone() {
        return rest == null;
    }

    /** Whether a side may leave a node. */
    boolean allows(int atNode, long side) {
        for (Restriction at = this; at != null; at = at.rest) {
            if (at.node == atNode && ((side & at.must) != at.must || (side & at.mustNot) != 0)) {
                return false;
            }
        }
        return true;
    }
}
