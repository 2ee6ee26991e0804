package org.bondspan.solve;

import java.util.ArrayList;
import java.util.List;

/** A routing problem as plain lists, to be changed and looked through by the tests. */
record Sketch(
        int ranks,
        List<Boolean> metal,
        List<List<Long>> tariffs,
        List<Stretch> edges,
        List<List<Landing>> terminals,
        CutNeed need,
        long tapWeight) {

    Sketch(
            int ranks,
            List<Boolean> metal,
            List<List<Long>> tariffs,
            List<Stretch> edges,
            List<List<Landing>> terminals,
            CutNeed need) {
        this(ranks, metal, tariffs, edges, terminals, need, 0);
    }

    /** The same where every tap has a weight. */
    Sketch withTapsOf(long weight) {
        return new Sketch(ranks, metal, tariffs, edges, terminals, need, weight);
    }

    record Stretch(int a, int b, long length, int tariff) {}

    record Landing(int node, long length, int tariff) {}

    RoutingProblem problem() {
        RoutingProblem.Builder builder = RoutingProblem.builder(ranks);
        metal.forEach(isMetal -> addNode(builder, isMetal));
        tariffs.forEach(tariff ->
                builder.addTariff(tariff.stream().mapToLong(Long::longValue).toArray()));
        edges.forEach(edge -> builder.addEdge(edge.a, edge.b, edge.length, edge.tariff));
        for (List<Landing> landings : terminals) {
            int terminal = builder.addTerminal();
            landings.forEach(landing -> builder.attach(terminal, landing.node, landing.length, landing.tariff));
        }
        builder.weighTaps(tapWeight);
        return builder.build(need);
    }

    private static void addNode(RoutingProblem.Builder builder, boolean isMetal) {
        if (isMetal) {
            builder.addMetal();
        } else {
            builder.addPlace();
        }
    }

    /** The rank bought for a need: least weight of those as large, then the smallest; -1 when none may be used. */
    int bought(int tariff, int needed) {
        int best = -1;
        for (int rank = needed; rank < ranks; rank++) {
            long weight = tariffs.get(tariff).get(rank);
            if (weight >= 0 && (best < 0 || weight < tariffs.get(tariff).get(best))) {
                best = rank;
            }
        }
        return best;
    }

    boolean isFree(Stretch edge) {
        long atMost = tariffs.get(edge.tariff).get(ranks - 1);
        return atMost == 0 || (edge.length == 0 && atMost > 0);
    }

    /** First of the nodes that lie together with a node. */
    int spotOf(int node) {
        return spots()[node];
    }

    private int[] spots() {
        int[] spot = new int[metal.size()];
        for (int v = 0; v < spot.length; v++) {
            spot[v] = v;
        }
        boolean changes = true;
        while (changes) {
            changes = false;
            for (Stretch edge : edges) {
                if (isFree(edge) && spot[edge.a] != spot[edge.b]) {
                    int least = Math.min(spot[edge.a], spot[edge.b]);
                    spot[edge.a] = least;
                    spot[edge.b] = least;
                    changes = true;
                }
            }
        }
        return spot;
    }

    /** The same with nodes that lie together made one. */
    Sketch withSpots() {
        int[] spot = spots();
        List<Boolean> isMetal = new ArrayList<>(metal);
        for (int v = 0; v < spot.length; v++) {
            isMetal.set(spot[v], isMetal.get(spot[v]) || metal.get(v));
        }
        List<Stretch> moved = edges.stream()
                .filter(edge -> spot[edge.a] != spot[edge.b])
                .map(edge -> new Stretch(spot[edge.a], spot[edge.b], edge.length, edge.tariff))
                .toList();
        List<List<Landing>> landings = terminals.stream()
                .map(ways -> ways.stream()
                        .map(way -> new Landing(spot[way.node], way.length, way.tariff))
                        .toList())
                .toList();
        return new Sketch(ranks, isMetal, tariffs, moved, landings, need, tapWeight);
    }
}
