package org.bondspan.network;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.math3.util.ArithmeticUtils;
import org.bondspan.layout.Piece;
import org.bondspan.price.Bands;
import org.bondspan.site.Busbar;
import org.bondspan.site.Position;
import org.bondspan.solve.RoutingProblem;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Length;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/**
 * The routing problem of a site where installed cost is to be least. A run at one height is paid by its length; what
 * has a fixed cost, or runs through several heights, is an edge of length 1 with a tariff of its own.
 *
 * <p>Weights are steps of money per 1000 ft times lengths in some unit. When they do not fit 64 bits the unit is made
 * coarser and everything is rounded down, so that the least weight is still a lower bound.
 */
final class CostProblem {
    private static final int MOST_COARSE = 9;

    private final RouteProblem problem;
    private final InstalledPrices prices;
    private final Heights heights;
    private final long unit;
    private final RoutingProblem.Builder builder;
    private final Map<List<Long>, Integer> tariffs = new HashMap<>();

    /** The integers, and what one of them is worth. */
    record Integers(RoutingProblem problem, BigDecimal grainsPerWeight, long discountCents) {
        /** What a tree of that weight costs at least: lugs on busbars may save something on taps. */
        ExactMoney worth(long weight) {
            ExactMoney discount = ExactMoney.of(Money.ofCents(-discountCents));
            return new ExactMoney(BigDecimal.valueOf(weight).multiply(grainsPerWeight)).plus(discount);
        }
    }

    private CostProblem(RouteProblem problem, InstalledPrices prices, long unit) {
        this.problem = problem;
        this.prices = prices;
        this.heights = new Heights(problem.network());
        this.unit = unit;
        this.builder = RoutingProblem.builder(problem.sizes().size());
    }

    /** Throws {@link ArithmeticException} when even coarse weights do not fit. */
    static Integers of(RouteProblem problem, InstalledPrices prices) {
        long unit = ArithmeticUtils.gcd(problem.lengthUnit(), ExactMoney.GRAINS_PER_CENT);
        for (int coarse = 0; ; coarse++) {
            try {
                CostProblem made = new CostProblem(problem, prices, unit);
                BigDecimal grains = BigDecimal.valueOf(unit).divide(prices.stepsPerCent());
                return new Integers(made.build(), grains, made.busbarDiscount());
            } catch (ArithmeticException overflow) {
                if (coarse == MOST_COARSE) {
                    throw overflow;
                }
                unit = Math.multiplyExact(unit, 10);
            }
        }
    }

    private RoutingProblem build() {
        Network network = problem.network();
        NetworkArrays arrays = network.arrays();
        for (int place = 0; place < network.placeCount(); place++) {
            // Copper on an installed conductor is tapped to it, whatever else meets there: that is counted afterwards.
            if (network.findInstalledAt(place).isPresent()) {
                builder.addMetal();
            } else {
                builder.addPlace();
            }
        }
        network.metalNodes().values().forEach(ignored -> builder.addMetal());
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            addEdge(arrays, edge);
        }
        for (int t = 0; t < problem.terminalCount(); t++) {
            builder.addTerminal();
            for (Attachment way : problem.attachments(t)) {
                attach(t, way);
            }
        }
        builder.weighTaps(tapWeight());
        return builder.build(problem.cutNeed());
    }

    private void addEdge(NetworkArrays arrays, int edge) {
        Optional<WireSize> free = arrays.freeUpTo(edge);
        Optional<WireSize> largest = arrays.largest(edge);
        int from = arrays.from(edge);
        int to = arrays.to(edge);
        Length length = Length.ofNanometres(arrays.length(edge));
        if (arrays.kind(edge) == EdgeKind.INSTALLED) {
            builder.addEdge(from, to, 0, tariff(weights(free, largest, size -> OptionalLong.of(0))));
            return;
        }
        if (arrays.kind(edge) == EdgeKind.CROSSING) {
            long passing = prices.crossing(arrays.path(edge));
            builder.addEdge(
                    from,
                    to,
                    1,
                    tariff(weights(free, largest, size -> OptionalLong.of(weight(ExactMoney.ZERO, passing)))));
            return;
        }
        if (arrays.kind(edge) == EdgeKind.LANDING) {
            Piece piece = heights.at(Math.min(from, to), length);
            builder.addEdge(from, to, 1, tariff(fixed(free, largest, piece, prices.landing(arrays.path(edge)))));
            return;
        }
        Piece piece = heights.between(from, to, length);
        List<String> walls = problem.network().walls(edge);
        List<Bands.Part> parts = prices.parts(problem.sizes().get(0), piece);
        if (walls.isEmpty() && parts.size() == 1) {
            int tariff = tariff(weights(
                    free,
                    largest,
                    size -> prices.rate(size, prices.parts(size, piece).get(0).band())));
            builder.addEdge(from, to, length.nanometres() / unit, tariff);
            return;
        }
        long crossings = walls.stream().mapToLong(prices::crossing).sum();
        builder.addEdge(from, to, 1, tariff(fixed(free, largest, piece, crossings)));
    }

    private void attach(int terminal, Attachment way) {
        if (problem.network().isMetal(way.node())) {
            builder.attach(
                    terminal,
                    way.node(),
                    0,
                    tariff(weights(Optional.empty(), Optional.empty(), size -> OptionalLong.of(0))));
            return;
        }
        Piece piece = heights.at(way.node(), Length.ofNanometres(way.makeUp()));
        long landing = prices.landing(way.landing().of());
        builder.attach(terminal, way.node(), 1, tariff(fixed(way.landed(), Optional.empty(), piece, landing)));
    }

    /** By rank what a piece and so many cents weigh. */
    private long[] fixed(Optional<WireSize> free, Optional<WireSize> largest, Piece piece, long cents) {
        return weights(free, largest, size -> {
            Optional<ExactMoney> copper = prices.cost(size, piece);
            return copper.isEmpty() ? OptionalLong.empty() : OptionalLong.of(weight(copper.get(), cents));
        });
    }

    private long weight(ExactMoney copper, long cents) {
        BigDecimal grains =
                copper.grains().add(BigDecimal.valueOf(cents).multiply(BigDecimal.valueOf(ExactMoney.GRAINS_PER_CENT)));
        return grains.multiply(prices.stepsPerCent())
                .toBigIntegerExact()
                .divide(BigInteger.valueOf(unit))
                .longValueExact();
    }

    private interface Weigh {
        OptionalLong of(WireSize size);
    }

    private long[] weights(Optional<WireSize> free, Optional<WireSize> largest, Weigh weigh) {
        return problem.sizes().stream()
                .mapToLong(size -> {
                    if (largest.map(most -> !most.isAtLeast(size)).orElse(false)) {
                        return RoutingProblem.FORBIDDEN;
                    }
                    return free.map(most -> most.isAtLeast(size)).orElse(false)
                            ? 0
                            : weigh.of(size).orElse(RoutingProblem.FORBIDDEN);
                })
                .toArray();
    }

    private int tariff(long[] weights) {
        return tariffs.computeIfAbsent(Arrays.stream(weights).boxed().toList(), ignored -> builder.addTariff(weights));
    }

    /** What lugs on busbars may cost less than the taps that the search counts there, in cents. */
    private long busbarDiscount() {
        OptionalLong lug = prices.busbarLug();
        if (lug.isEmpty() || problem.terminalCount() < 3) {
            return 0;
        }
        Network network = problem.network();
        Map<Position, Integer> meeting = new HashMap<>();
        for (Busbar busbar : network.site().busbars()) {
            meeting.put(busbar.position(), 0);
        }
        if (meeting.isEmpty()) {
            return 0;
        }
        NetworkArrays arrays = network.arrays();
        for (int edge = 0; edge < arrays.edgeCount(); edge++) {
            count(arrays.from(edge), meeting);
            count(arrays.to(edge), meeting);
        }
        for (int t = 0; t < problem.terminalCount(); t++) {
            problem.attachments(t).forEach(way -> count(way.node(), meeting));
        }
        return meeting.values().stream()
                .mapToLong(most -> Math.min(most, problem.terminalCount()))
                .map(most -> Math.max(0, (most - 2) * prices.tap() - most * lug.getAsLong()))
                .sum();
    }

    private void count(int node, Map<Position, Integer> meeting) {
        if (!problem.network().isMetal(node)) {
            meeting.computeIfPresent(problem.network().position(node), (at, count) -> count + 1);
        }
    }

    /** What a split costs at least: a tap, or less where landing each conductor on the metal at the place does it. */
    private long tapWeight() {
        int terminals = problem.terminalCount();
        if (terminals < 3) {
            return 0;
        }
        long cents = prices.tap();
        if (problem.network().site().makeUpPerEnd().isZero()) {
            for (String path : problem.network().metalNodes().keySet()) {
                cents = Math.min(cents, prices.landing(path));
            }
        }
        return weight(ExactMoney.ZERO, cents);
    }
}
