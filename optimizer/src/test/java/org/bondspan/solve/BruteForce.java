package org.bondspan.solve;

import java.util.List;
import java.util.Optional;

/**
 * The least tree of a tiny problem by trying every set of edges with every choice of landings, written for the tests
 * and sharing nothing with the solver. The need of an edge is read off the cut that taking it out makes.
 */
final class BruteForce {

    private final Sketch sketch;
    private final int[] landing;
    private Optional<Value> best = Optional.empty();

    private BruteForce(Sketch sketch) {
        this.sketch = sketch;
        landing = new int[sketch.terminals().size()];
    }

    /** Weight, length and taps, compared in this order. */
    record Value(long weight, long length, int taps) {
        boolean isLessThan(Value other) {
            if (weight != other.weight) {
                return weight < other.weight;
            }
            return length != other.length ? length < other.length : taps < other.taps;
        }
    }

    static Optional<Value> solve(Sketch sketch) {
        BruteForce search = new BruteForce(sketch);
        for (int chosen = 0; chosen < 1 << sketch.edges().size(); chosen++) {
            if (search.isTree(chosen)) {
                search.tryLandings(chosen, 0);
            }
        }
        return search.best;
    }

    private boolean isTree(int chosen) {
        boolean[] met = new boolean[sketch.metal().size()];
        int nodes = 0;
        int start = -1;
        for (int e = 0; e < sketch.edges().size(); e++) {
            if ((chosen >> e & 1) == 1) {
                for (int end : new int[] {
                    sketch.edges().get(e).a(), sketch.edges().get(e).b()
                }) {
                    nodes += met[end] ? 0 : 1;
                    met[end] = true;
                    start = end;
                }
            }
        }
        if (start < 0) {
            return true;
        }
        boolean[] reached = flood(chosen, start);
        int count = 0;
        for (boolean isReached : reached) {
            count += isReached ? 1 : 0;
        }
        return count == nodes && Integer.bitCount(chosen) == nodes - 1;
    }

    private boolean[] flood(int chosen, int start) {
        boolean[] reached = new boolean[sketch.metal().size()];
        reached[start] = true;
        for (int pass = 0; pass < reached.length; pass++) {
            for (int e = 0; e < sketch.edges().size(); e++) {
                Sketch.Stretch edge = sketch.edges().get(e);
                if ((chosen >> e & 1) == 1 && (reached[edge.a()] || reached[edge.b()])) {
                    reached[edge.a()] = true;
                    reached[edge.b()] = true;
                }
            }
        }
        return reached;
    }

    private void tryLandings(int chosen, int terminal) {
        if (terminal == landing.length) {
            weigh(chosen);
            return;
        }
        List<Sketch.Landing> ways = sketch.terminals().get(terminal);
        boolean[] inTree = terminal == 0 ? null : flood(chosen, node(0));
        for (int i = 0; i < ways.size(); i++) {
            if (inTree == null || inTree[ways.get(i).node()]) {
                landing[terminal] = i;
                tryLandings(chosen, terminal + 1);
            }
        }
    }

    private int node(int terminal) {
        return sketch.terminals().get(terminal).get(landing[terminal]).node();
    }

    private void weigh(int chosen) {
        long weight = 0;
        long length = 0;
        int[] conductors = new int[sketch.metal().size()];
        for (int e = 0; e < sketch.edges().size(); e++) {
            if ((chosen >> e & 1) == 1) {
                Sketch.Stretch edge = sketch.edges().get(e);
                if (!flood(chosen, node(0))[edge.a()]) {
                    return;
                }
                boolean[] side = flood(chosen & ~(1 << e), edge.a());
                long terminals = 0;
                for (int t = 0; t < landing.length; t++) {
                    terminals |= side[node(t)] ? 1L << t : 0;
                }
                if (terminals == 0 || terminals == (1L << landing.length) - 1) {
                    return;
                }
                int rank = sketch.bought(edge.tariff(), sketch.need().rank(terminals));
                if (rank < 0) {
                    return;
                }
                long perUnit = sketch.tariffs().get(edge.tariff()).get(rank);
                weight += perUnit * edge.length();
                length += perUnit == 0 ? 0 : edge.length();
                conductors[edge.a()]++;
                conductors[edge.b()]++;
            }
        }
        for (int t = 0; t < landing.length; t++) {
            Sketch.Landing way = sketch.terminals().get(t).get(landing[t]);
            int rank = sketch.bought(way.tariff(), sketch.need().rank(1L << t));
            if (rank < 0) {
                return;
            }
            long perUnit = sketch.tariffs().get(way.tariff()).get(rank);
            weight += perUnit * way.length();
            length += perUnit == 0 ? 0 : way.length();
            conductors[way.node()]++;
        }
        int taps = 0;
        for (int v = 0; v < conductors.length; v++) {
            taps += sketch.metal().get(v) ? 0 : Math.max(0, conductors[v] - 2);
        }
        weight += taps * sketch.tapWeight();
        Value value = new Value(weight, length, taps);
        if (best.isEmpty() || value.isLessThan(best.get())) {
            best = Optional.of(value);
        }
    }
}
