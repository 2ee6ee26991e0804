package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The chosen tree taken apart into runs of new copper between nodes where something joins. */
final class TreeRuns {
    private final Network network;
    private final Map<Integer, Integer> ranks;
    private final Map<Integer, List<Integer>> edgesAt = new TreeMap<>();
    private final Map<Integer, Integer> attached = new HashMap<>();

    /** @param ranks the rank of each edge of the tree */
    TreeRuns(RouteProblem problem, Map<Integer, Integer> ranks, List<Integer> attachments) {
        this.network = problem.network();
        this.ranks = ranks;
        ranks.keySet().stream().sorted().forEach(edge -> {
            edgesAt(network.arrays().from(edge)).add(edge);
            edgesAt(network.arrays().to(edge)).add(edge);
        });
        for (int t = 0; t < attachments.size(); t++) {
            if (attachments.get(t) >= 0) {
                attached.merge(problem.attachments(t).get(attachments.get(t)).node(), 1, Integer::sum);
            }
        }
    }

    private List<Integer> edgesAt(int node) {
        return edgesAt.computeIfAbsent(node, ignored -> new ArrayList<>());
    }

    /** Edges and terminals at a node. */
    int degree(int node) {
        return edgesAt(node).size() + attached.getOrDefault(node, 0);
    }

    List<Run> list() {
        List<Run> list = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        for (int node : List.copyOf(edgesAt.keySet())) {
            if (isBreak(node)) {
                for (int edge : edgesAt(node)) {
                    if (isNewCopper(edge) && !done.contains(edge)) {
                        Run run = follow(node, edge);
                        done.addAll(run.edges());
                        list.add(run);
                    }
                }
            }
        }
        return list;
    }

    private Run follow(int from, int first) {
        List<Integer> edges = new ArrayList<>(List.of(first));
        int last = first;
        int at = other(first, from);
        while (!isBreak(at)) {
            int arrived = last;
            last = edgesAt(at).stream()
                    .filter(edge -> edge != arrived)
                    .findFirst()
                    .orElseThrow();
            edges.add(last);
            at = other(last, at);
        }
        Integer rank = ranks.get(first);
        if (rank == null) {
            throw new IllegalStateException("edge " + first + " has no rank");
        }
        return new Run(from, at, edges, rank);
    }

    private int other(int edge, int node) {
        int from = network.arrays().from(edge);
        return from == node ? network.arrays().to(edge) : from;
    }

    private boolean isBreak(int node) {
        return network.isMetal(node)
                || attached.containsKey(node)
                || edgesAt(node).size() != 2
                || !edgesAt(node).stream().allMatch(this::isNewCopper);
    }

    private boolean isNewCopper(int edge) {
        return network.arrays().kind(edge) != EdgeKind.INSTALLED;
    }
}
