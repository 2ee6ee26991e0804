package org.bondspan.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The way from the first service to each thing connected, as the ids passed: conductors, paths, the thing itself. */
final class Ways {
    private final RouteProblem problem;
    private final Tie tie;
    private final Map<TieEdge, String> conductorOf = new HashMap<>();

    Ways(RouteProblem problem, Tie tie, List<Stretch> stretches, Conductors conductors) {
        this.problem = problem;
        this.tie = tie;
        stretches.forEach(stretch ->
                conductors.findId(stretch).ifPresent(id -> stretch.edges().forEach(edge -> conductorOf.put(edge, id))));
    }

    /** By the id of everything connected: services, electrodes, frames and pipes that the tie runs over. */
    Map<String, List<String>> list() {
        Map<String, List<String>> ways = new HashMap<>();
        for (int vertex : tie.outward()) {
            if (tie.isMetal(vertex)) {
                ways.put(problem.network().metalPath(vertex), way(vertex));
            } else if (Tie.isTerminal(vertex)) {
                ways.put(name(vertex), way(vertex));
            }
        }
        return ways;
    }

    private List<String> way(int vertex) {
        List<String> way = new ArrayList<>();
        int at = vertex;
        add(name(at), way);
        while (!tie.isRoot(at)) {
            TieEdge edge = tie.parent(at);
            add(conductorOf.getOrDefault(edge, edge.carriedBy()), way);
            at = edge.other(at);
            add(name(at), way);
        }
        Collections.reverse(way);
        return way;
    }

    private static void add(String id, List<String> way) {
        if (!id.isEmpty() && (way.isEmpty() || !way.get(way.size() - 1).equals(id))) {
            way.add(id);
        }
    }

    private String name(int vertex) {
        if (Tie.isTerminal(vertex)) {
            return tie.chosenAttachment(Tie.terminal(vertex)).landing().of();
        }
        return tie.isMetal(vertex) ? problem.network().metalPath(vertex) : "";
    }
}
