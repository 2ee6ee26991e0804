package org.bondspan.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;
import org.bondspan.units.WireSize;

/**
 * From one node, among the shortest runs of copper to each node those with the fewest bends: Dijkstra over nodes and
 * the direction in which they are entered, by length first and bends second.
 */
final class FewestBends {
    private final CopperRuns runs;
    private final NetworkArrays arrays;
    private final Map<State, Label> labels = new HashMap<>();
    private final Map<Integer, State> best = new HashMap<>();

    private record State(int node, int direction) {}

    private record Label(long length, int bends, int edge, State before) {}

    private record Candidate(State state, Label label) implements Comparable<Candidate> {
        @Override
        public int compareTo(Candidate other) {
            int byLength = Long.compare(label.length, other.label.length);
            int byBends = byLength != 0 ? byLength : Integer.compare(label.bends, other.label.bends);
            int byNode = byBends != 0 ? byBends : Integer.compare(state.node, other.state.node);
            return byNode != 0 ? byNode : Integer.compare(state.direction, other.state.direction);
        }
    }

    /** @param useful nodes worth entering: those on a shortest run to a goal */
    FewestBends(Network network, CopperRuns runs, int from, WireSize size, IntPredicate useful) {

        this.runs = runs;
        this.arrays = network.arrays();
        State start = new State(from, Direction.NONE);
        PriorityQueue<Candidate> queue = new PriorityQueue<>();
        queue.add(new Candidate(start, new Label(0, 0, -1, start)));
        while (!queue.isEmpty()) {
            Candidate here = queue.remove();
            if (labels.putIfAbsent(here.state, here.label) != null) {
                continue;
            }
            best.putIfAbsent(here.state.node, here.state);
            if (!network.isMetal(here.state.node) || here.state.node == from) {
                expand(here, size, useful, queue);
            }
        }
    }

    private void expand(Candidate here, WireSize size, IntPredicate useful, PriorityQueue<Candidate> queue) {
        int node = here.state.node;
        for (int i = runs.firstEdge(node); i < runs.endEdge(node); i++) {
            int edge = runs.edge(i);
            int next = runs.other(edge, node);
            if (runs.takes(edge, size) && useful.test(next)) {
                boolean isRun = arrays.direction(edge) != Direction.NONE && arrays.length(edge) > 0;
                int direction = isRun ? arrays.direction(edge) : here.state.direction;
                boolean bend = here.state.direction != Direction.NONE && direction != here.state.direction;
                State state = new State(next, direction);
                if (!labels.containsKey(state)) {
                    long length = here.label.length + runs.length(edge, size);
                    queue.add(new Candidate(
                            state, new Label(length, here.label.bends + (bend ? 1 : 0), edge, here.state)));
                }
            }
        }
    }

    /** Bends on the way to a node; empty where none leads to it. */
    Optional<Integer> findBends(int node) {
        return Optional.ofNullable(best.get(node)).map(state -> label(state).bends);
    }

    /** Copper on the way to a node that is reached. */
    long length(int node) {
        return label(state(node)).length;
    }

    private State state(int node) {
        State state = best.get(node);
        if (state == null) {
            throw new IllegalArgumentException("no run leads to node " + node);
        }
        return state;
    }

    private Label label(State state) {
        Label label = labels.get(state);
        if (label == null) {
            throw new IllegalStateException("no label at " + state);
        }
        return label;
    }

    /** Edges from the start to a node that is reached. */
    List<Integer> path(int node) {
        List<Integer> path = new ArrayList<>();
        for (State at = state(node); label(at).edge >= 0; at = label(at).before) {
            path.add(label(at).edge);
        }
        Collections.reverse(path);
        return path;
    }
}
