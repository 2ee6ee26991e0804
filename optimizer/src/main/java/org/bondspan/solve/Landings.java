package org.bondspan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The ways to land each terminal, by spots.
 *
 * <p>Two terminals that can land on one spot only, the same, become one leaf. That changes nothing: in every tree both
 * hang there on conductors of their own, paid at the needs of the cuts around each, and every other stretch has both of
 * them behind it or none. The leaf counts the taps that its members make among themselves.
 */
final class Landings {

    private final RoutingProblem problem;
    private final Spots spots;

    Landings(RoutingProblem problem, Spots spots) {
        this.problem = problem;
        this.spots = spots;
    }

    /** What an attachment costs at the need of its terminal alone; {@link Cost#UNKNOWN} when it cannot meet it. */
    Cost cost(int terminal, int attachment) {
        Links ways = problem.attachments(terminal);
        int need = need(terminal);
        int tariff = ways.tariff(attachment);
        return problem.tariffs().bought(tariff, need) < 0
                ? Cost.UNKNOWN
                : problem.tariffs().cost(ways.length(attachment), tariff, need);
    }

    /** Rank needed by the cut around a terminal alone, where there are others. */
    int need(int terminal) {
        return problem.need().rankAround(terminal);
    }

    /** Cheapest attachment of a terminal on a spot, the first of several; -1 when there is none. */
    int best(int terminal, int spot) {
        int best = -1;
        Cost least = Cost.UNKNOWN;
        Links ways = problem.attachments(terminal);
        for (int i = 0; i < ways.size(); i++) {
            if (spots.of(ways.b(i)) == spot && cost(terminal, i).compareTo(least) < 0) {
                best = i;
                least = cost(terminal, i);
            }
        }
        return best;
    }

    /** The leaves, on nodes that are spots; one of them has no node when a terminal cannot land anywhere. */
    List<Leaf> leaves() {
        List<Leaf> leaves = new ArrayList<>();
        for (int t = 0; t < problem.terminalCount(); t++) {
            Leaf leaf = leaf(t);
            int twin = leaf.size() == 1 ? twin(leaves, leaf.node(0)) : -1;
            if (twin < 0) {
                leaves.add(leaf);
            } else {
                leaves.set(twin, merged(leaves.get(twin), leaf));
            }
        }
        return leaves;
    }

    private Leaf leaf(int terminal) {
        Map<Integer, Cost> least = new TreeMap<>();
        Links ways = problem.attachments(terminal);
        for (int i = 0; i < ways.size(); i++) {
            Cost cost = cost(terminal, i);
            if (!cost.equals(Cost.UNKNOWN)) {
                least.merge(spots.of(ways.b(i)), cost, (a, b) -> a.compareTo(b) <= 0 ? a : b);
            }
        }
        int[] nodes = least.keySet().stream().mapToInt(Integer::intValue).toArray();
        BitSet alone = new BitSet();
        alone.set(terminal);
        return new Leaf(alone, nodes, least.values().toArray(Cost[]::new));
    }

    private static int twin(List<Leaf> leaves, int spot) {
        for (int i = 0; i < leaves.size(); i++) {
            if (leaves.get(i).size() == 1 && leaves.get(i).node(0) == spot) {
                return i;
            }
        }
        return -1;
    }

    private Leaf merged(Leaf leaf, Leaf other) {
        int spot = leaf.node(0);
        Cost tap = spots.isMetal(spot) ? Cost.NOTHING : Cost.of(problem.tapWeight(), 0, 1);
        Cost both = leaf.cost(0).plus(other.cost(0)).plus(tap);
        BitSet members = (BitSet) leaf.members().clone();
        members.or(other.members());
        return new Leaf(members, new int[] {spot}, new Cost[] {both});
    }
}
