package org.bondspan.network;

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

    /**
     * @param copper new copper by what it is spent on; zero where something carries
     * @param carriedBy the path that carries without new copper; empty for copper
     */
    TieEdge(int a, int b, WireSize size, RunLength copper, String carriedBy, int direction) {
        this.a = a;
        this.b = b;
        this.size = size;
        this.copper = copper;
        this.carriedBy = carriedBy;
        this.direction = direction;
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
