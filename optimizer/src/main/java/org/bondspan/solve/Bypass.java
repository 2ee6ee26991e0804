package org.bondspan.solve;

import java.util.Arrays;

/** Breadth-first searches among unsettled nodes, for the witness of a {@link Separator}. */
final class Bypass {

    private final Core core;
    private final Labels labels;
    private final Separator witness;
    private final int[] seen;
    private final int[] source;
    private final int[] arcTo;
    private final int[] queue;
    private int now;

    private Classes groups = new Classes(0);
    private int[] frontier = new int[0];
    private int[] touches = new int[0];
    private int groupsLeft;

    Bypass(Core core, Labels labels, Separator witness) {
        this.core = core;
        this.labels = labels;
        this.witness = witness;
        seen = new int[core.nodes()];
        source = new int[core.nodes()];
        arcTo = new int[core.nodes()];
        queue = new int[core.nodes()];
    }

    private boolean isSeen(int node) {
        return seen[node] == now;
    }

    /** Adds the way from where a search began to a node to the witness. */
    private void linkBack(int node) {
        int at = node;
        witness.enter(at);
        while (arcTo[at] >= 0) {
            witness.link(core.arcEdge(arcTo[at]));
            at = core.arcStart(arcTo[at]);
            witness.enter(at);
        }
    }

    private void see(int node, int byArc, int from) {
        seen[node] = now;
        arcTo[node] = byArc;
        source[node] = from;
    }

    /**
     * Joins the neighbours that a node of the witness had in it. A part with nowhere to go is let go when no leaf is
     * touched there, or all are. Returns false when some are.
     */
    boolean around(int node) {
        now++;
        int to = 0;
        for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
            int end = core.arcEnd(arc);
            if (witness.isLinked(core.arcEdge(arc))) {
                witness.unlink(core.arcEdge(arc));
                see(end, -1, to);
                queue[to++] = end;
            }
        }
        return to < 2 || joins(to);
    }

    private boolean joins(int sources) {
        groups = new Classes(sources);
        groupsLeft = sources;
        frontier = new int[sources];
        Arrays.fill(frontier, 1);
        touches = new int[sources];
        for (int i = 0; i < sources; i++) {
            touches[i] = witness.touchesAt(queue[i]);
        }
        int to = sources;
        for (int at = 0; at < to; at++) {
            int node = queue[at];
            for (int arc = core.firstArc(node); arc < core.firstArc(node + 1); arc++) {
                int end = core.arcEnd(arc);
                if (labels.isSettled(end) || !witness.isOpen(arc)) {
                    continue;
                }
                int group = groups.find(source[node]);
                if (!isSeen(end)) {
                    see(end, arc, group);
                    queue[to++] = end;
                    frontier[group]++;
                    touches[group] += witness.touchesAt(end);
                } else if (merge(node, arc, end) && groupsLeft == 1) {
                    return true;
                }
            }
            int group = groups.find(source[node]);
            if (--frontier[group] == 0) {
                if (touches[group] == witness.needed()) {
                    return true;
                }
                if (touches[group] > 0) {
                    return false;
                }
                if (--groupsLeft == 1) {
                    return true;
                }
            }
        }
        return true;
    }

    private boolean merge(int node, int arc, int end) {
        int one = groups.find(source[node]);
        int other = groups.find(source[end]);
        if (!groups.join(one, other)) {
            return false;
        }
        int head = groups.find(one);
        int gone = head == one ? other : one;
        frontier[head] += frontier[gone];
        touches[head] += touches[gone];
        groupsLeft--;
        witness.link(core.arcEdge(arc));
        linkBack(node);
        linkBack(end);
        return true;
    }
}
