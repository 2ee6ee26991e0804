package org.bondspan.network;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Piece;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Length;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/** What edges of the network cost installed, so that a run is only moved where it costs no more. */
final class EdgePrices {
    private final RouteProblem problem;
    private final InstalledPrices prices;
    private final Heights heights;

    EdgePrices(RouteProblem problem, InstalledPrices prices) {
        this.problem = problem;
        this.prices = prices;
        this.heights = new Heights(problem.network());
    }

    /** New copper along an edge. */
    Piece piece(int edge) {
        NetworkArrays arrays = problem.network().arrays();
        int from = arrays.from(edge);
        int to = arrays.to(edge);
        Length length = Length.ofNanometres(arrays.length(edge));
        return arrays.kind(edge) == EdgeKind.LANDING
                ? heights.at(Math.min(from, to), length)
                : heights.between(from, to, length);
    }

    /** Copper, landing and walls; empty where the size is not priced. */
    Optional<ExactMoney> cost(int edge, WireSize size) {
        NetworkArrays arrays = problem.network().arrays();
        if (arrays.freeUpTo(edge).map(most -> most.isAtLeast(size)).orElse(false)) {
            return Optional.of(ExactMoney.ZERO);
        }
        long cents = problem.network().walls(edge).stream()
                .mapToLong(prices::crossing)
                .sum();
        if (arrays.kind(edge) == EdgeKind.LANDING) {
            cents += prices.landing(arrays.path(edge));
        }
        ExactMoney fixed = ExactMoney.of(Money.ofCents(cents));
        return prices.cost(size, piece(edge)).map(fixed::plus);
    }

    /** Whether other edges in place of those of a run cost no more. */
    boolean isNoDearer(Run now, List<Integer> then) {
        WireSize size = problem.size(now.rank());
        Optional<ExactMoney> before = sum(now.edges(), size);
        Optional<ExactMoney> after = sum(then, size);
        return before.isPresent()
                && after.map(money -> money.compareTo(before.get()) <= 0).orElse(false);
    }

    private Optional<ExactMoney> sum(List<Integer> edges, WireSize size) {
        ExactMoney sum = ExactMoney.ZERO;
        for (int edge : edges) {
            Optional<ExactMoney> cost = cost(edge, size);
            if (cost.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(cost.get());
        }
        return Optional.of(sum);
    }
}
