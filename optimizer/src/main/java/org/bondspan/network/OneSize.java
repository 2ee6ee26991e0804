package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bondspan.layout.Piece;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;
import org.jgrapht.alg.util.UnionFind;

/**
 * Gives every conductor one size from end to end. The solver buys each edge at its own cheapest size; a conductor is
 * bought at the size that is cheapest for all of its edges together.
 */
final class OneSize {
    private final RouteProblem problem;
    private final InstalledPrices prices;
    private final Heights heights;
    private final EdgePrices edges;
    private final UnionFind<Integer> same = new UnionFind<>(new HashSet<>());
    private final Map<Integer, List<Integer>> partsAt = new TreeMap<>();

    OneSize(RouteProblem problem, InstalledPrices prices) {
        this.problem = problem;
        this.prices = prices;
        this.heights = new Heights(problem.network());
        this.edges = new EdgePrices(problem, prices);
    }

    /** Edges of the network are told by their numbers, the attachment of terminal t by -1 - t. */
    ChosenTree settle(ChosenTree chosen) {
        if (chosen.attachments().contains(-1)) {
            return chosen;
        }
        NetworkArrays arrays = problem.network().arrays();
        chosen.ranks().keySet().stream().sorted().forEach(edge -> {
            at(arrays.from(edge), edge);
            at(arrays.to(edge), edge);
        });
        for (int t = 0; t < problem.terminalCount(); t++) {
            at(way(chosen, t).node(), -1 - t);
        }
        partsAt.values().stream().flatMap(List::stream).distinct().forEach(same::addElement);
        partsAt.forEach((node, parts) -> {
            boolean goesThrough = parts.size() == 2 && !problem.network().isMetal(node);
            if (goesThrough && parts.stream().noneMatch(part -> isFree(chosen, part))) {
                same.union(parts.get(0), parts.get(1));
            }
        });
        return bought(chosen);
    }

    private void at(int node, int part) {
        partsAt.computeIfAbsent(node, ignored -> new ArrayList<>()).add(part);
    }

    private Attachment way(ChosenTree chosen, int terminal) {
        return problem.attachments(terminal).get(chosen.attachments().get(terminal));
    }

    private static int rank(ChosenTree chosen, int part) {
        Integer rank = part < 0
                ? chosen.attachmentRanks().get(-1 - part)
                : chosen.ranks().get(part);
        if (rank == null) {
            throw new IllegalArgumentException("no part " + part);
        }
        return rank;
    }

    private boolean isFree(ChosenTree chosen, int part) {
        Optional<WireSize> free = part < 0
                ? way(chosen, -1 - part).landed()
                : problem.network().arrays().freeUpTo(part);
        boolean carried =
                part < 0 && problem.network().isMetal(way(chosen, -1 - part).node());
        WireSize size = problem.size(rank(chosen, part));
        return carried || free.map(most -> most.isAtLeast(size)).orElse(false);
    }

    private Piece piece(ChosenTree chosen, int part) {
        if (part < 0) {
            Attachment way = way(chosen, -1 - part);
            return heights.at(way.node(), Length.ofNanometres(way.makeUp()));
        }
        return edges.piece(part);
    }

    private ChosenTree bought(ChosenTree chosen) {
        Map<Integer, List<Integer>> conductors = new TreeMap<>();
        partsAt.values()
                .forEach(parts -> parts.stream()
                        .filter(part -> !isFree(chosen, part))
                        .forEach(part -> {
                            List<Integer> members =
                                    conductors.computeIfAbsent(same.find(part), ignored -> new ArrayList<>());
                            if (!members.contains(part)) {
                                members.add(part);
                            }
                        }));
        Map<Integer, Integer> ranks = new HashMap<>(chosen.ranks());
        List<Integer> attachmentRanks = new ArrayList<>(chosen.attachmentRanks());
        for (List<Integer> members : conductors.values()) {
            int rank = cheapest(chosen, members);
            for (int part : members) {
                if (part < 0) {
                    attachmentRanks.set(-1 - part, rank);
                } else {
                    ranks.put(part, rank);
                }
            }
        }
        return new ChosenTree(ranks, chosen.attachments(), attachmentRanks);
    }

    /** Of the ranks as large as the smallest bought, the cheapest for all parts; what limits one of them limits all. */
    private int cheapest(ChosenTree chosen, List<Integer> members) {
        int smallest =
                members.stream().mapToInt(part -> rank(chosen, part)).min().orElseThrow();
        int largest =
                members.stream().mapToInt(part -> rank(chosen, part)).max().orElseThrow();
        int best = largest;
        Optional<ExactMoney> least = Optional.empty();
        for (int rank = smallest; rank < problem.sizes().size() && smallest < largest; rank++) {
            Optional<ExactMoney> cost = cost(chosen, members, rank);
            if (cost.isPresent()
                    && least.map(money -> cost.get().compareTo(money) < 0).orElse(true)) {
                best = rank;
                least = cost;
            }
        }
        return best;
    }

    private Optional<ExactMoney> cost(ChosenTree chosen, List<Integer> members, int rank) {
        WireSize size = problem.size(rank);
        ExactMoney sum = ExactMoney.ZERO;
        for (int part : members) {
            boolean fits = part < 0
                    || problem.network()
                            .arrays()
                            .largest(part)
                            .map(most -> most.isAtLeast(size))
                            .orElse(true);
            Optional<ExactMoney> cost = fits ? prices.cost(size, piece(chosen, part)) : Optional.empty();
            if (cost.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(cost.get());
        }
        return Optional.of(sum);
    }
}
