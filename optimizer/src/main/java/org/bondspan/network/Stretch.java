package org.bondspan.network;

import java.util.List;
import org.bondspan.layout.Piece;
import org.bondspan.layout.RunLength;

/**
 * A part of the tie between two vertices where something joins: one conductor, or one stretch of what carries.
 *
 * @param from the vertex nearer to the first service
 * @param edges from {@code from} to {@code to}
 */
record Stretch(int from, int to, List<TieEdge> edges) {
    Stretch {
        edges = List.copyOf(edges);
    }

    TieEdge first() {
        return edges.get(0);
    }

    boolean isCarried() {
        return first().isCarried();
    }

    RunLength copper() {
        return RunLength.sum(edges.stream().map(TieEdge::copper).toList());
    }

    List<Piece> pieces() {
        return Heights.merged(
                edges.stream().flatMap(edge -> edge.pieces().stream()).toList());
    }

    /** Ids of walls that it passes, in order. */
    List<String> crosses() {
        return edges.stream().flatMap(edge -> edge.crosses().stream()).toList();
    }

    /** Copper that has no length: a landing without make-up where the run already is. */
    boolean isNothing() {
        return !isCarried() && copper().total().isZero();
    }
}
