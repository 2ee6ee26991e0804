package org.bondspan.network;

import java.util.List;
import org.bondspan.layout.Piece;
import org.bondspan.layout.RunLength;
import org.bondspan.units.WireSize;

/**
 * An edge of the tie: a run, a landing, or what joins a terminal. Compared by identity.
 *
 * <p>Vertices are nodes of the network; terminals are numbered -1, -2 and on.
 */
final class TieEdge {
    private final int a;
    private final int b;
    private final WireSize size;
    private final RunLength copper;
    private final String carriedBy;
    private final int direction;
    private final List<Piece> pieces;
    private final List<String> crosses;

    /**
     * @param copper new copper by what it is spent on; zero where something carries
     * @param pieces that copper by how high it runs
     * @param crosses ids of walls passed
     * @param carriedBy the path that carries without new copper; empty for copper
     */
    TieEdge(
            int a,
            int b,
            WireSize size,
            RunLength copper,
            List<Piece> pieces,
            List<String> crosses,
            String carriedBy,
            int direction) {
        this.a = a;
        this.b = b;
        this.size = size;
        this.copper = copper;
        this.carriedBy = carriedBy;
        this.direction = direction;
        this.pieces = List.copyOf(pieces);
        this.crosses = List.copyOf(crosses);
    }

    int a() {
        return a;
    }

    int b() {
        return b;
    }

    int other(int vertex) {
        return vertex == a ? b : a;
    }

    WireSize size() {
        return size;
    }

    RunLength copper() {
        return copper;
    }

    List<Piece> pieces() {
        return pieces;
    }

    List<String> crosses() {
        return crosses;
    }

    String carriedBy() {
        return carriedBy;
    }

    boolean isCarried() {
        return !carriedBy.isEmpty();
    }

    int direction() {
        return direction;
    }
}
