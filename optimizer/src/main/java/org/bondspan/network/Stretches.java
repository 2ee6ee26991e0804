package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;

/** Takes the tie apart at every place where something joins. */
final class Stretches {
    private final Tie tie;

    private Stretches(Tie tie) {
        this.tie = tie;
    }

    /** All stretches, those nearer to the first service first. */
    static List<Stretch> of(Tie tie) {
        return new Stretches(tie).list();
    }

    private List<Stretch> list() {
        List<Stretch> stretches = new ArrayList<>();
        for (int vertex : tie.outward()) {
            if (tie.isRoot(vertex) || isBreak(vertex)) {
                tie.children(vertex).forEach(edge -> stretches.add(follow(vertex, edge)));
            }
        }
        return stretches;
    }

    private Stretch follow(int from, TieEdge first) {
        List<TieEdge> edges = new ArrayList<>(List.of(first));
        int at = first.other(from);
        while (!isBreak(at)) {
            TieEdge next = tie.children(at).get(0);
            edges.add(next);
            at = next.other(at);
        }
        return new Stretch(from, at, edges);
    }

    private boolean isBreak(int vertex) {
        return Tie.isTerminal(vertex)
                || tie.isMetal(vertex)
                || tie.degree(vertex) != 2
                || !isSameKind(tie.parent(vertex), tie.children(vertex).get(0));
    }

    private static boolean isSameKind(TieEdge a, TieEdge b) {
        return a.carriedBy().equals(b.carriedBy()) && (a.isCarried() || a.size() == b.size());
    }
}
