package org.bondspan.usecase;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.Rule;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Status;
import org.bondspan.network.Interconnection;
import org.bondspan.price.MissingPriceException;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Site;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakingOff;
import org.bondspan.takeoff.Total;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Money;

/** Finds the interconnection of a site with the least copper, or the least cost, proven least where limits allow. */
public final class RouteSite {
    /** Of all the time: how much the search for the least cost may take; the rest is for the least copper. */
    private static final double SHARE_OF_COST = 0.6;

    private RouteSite() {}

    /** As {@link #of(Site, RouteLimits)}, without limits. */
    public static Layout of(Site site) {
        return of(site, RouteLimits.none());
    }

    /**
     * The least copper; its status says whether there is an answer, and whether it is proven least. Taps are made in
     * the way that is cheaper at the prices of the site, if it has any.
     *
     * @throws TooFineException when the plan is so large and so fine that weights cannot be compared exactly
     * @throws NothingFoundException when no lawful tie was found though none was proven impossible
     */
    public static Layout of(Site site, RouteLimits limits) {
        try {
            return Interconnection.find(site, limits.forNetwork()).orElseThrow(NothingFoundException::new);
        } catch (ArithmeticException overflow) {
            throw new TooFineException(overflow);
        }
    }

    /**
     * The least installed cost at the prices of the site, with what the least copper would weigh and cost. Proven least
     * when the take-off of the answer, made from the answer alone, costs no more than the lower bound of the search.
     * The limits are for both searches together; progress is told of the second alone, for the least copper.
     *
     * @throws MissingPriceException naming every price that it takes and that is not stated
     * @throws TooFineException when the plan is so large and so fine that costs cannot be compared
     * @throws NothingFoundException when no lawful tie was found though none was proven impossible
     */
    public static Layout leastCost(Site site, RouteLimits limits) {
        PriceBook prices = site.prices().orElseThrow(() -> new IllegalArgumentException("a site without prices"));
        Countdown countdown = Countdown.of(limits);
        Interconnection.Priced priced = searchLeastCost(site, limits);
        if (priced.layout().status() == Status.IMPOSSIBLE) {
            return priced.layout();
        }
        TakenOff found = TakenOff.of(site, priced.layout(), prices);
        TakenOff leastCopper = TakenOff.of(site, of(site, countdown.left()), prices);
        TakenOff best = leastCopper.exact().compareTo(found.exact()) < 0 ? leastCopper : found;
        ExactMoney bound = priced.bound().orElseThrow();
        if (best.exact().compareTo(bound) < 0) {
            throw new IllegalStateException("the cost " + best.exact() + " lies below the bound " + bound);
        }
        BigDecimal gap = gapPercent(best.exact(), bound);
        Cost cost = cost(prices.currency(), best.total, leastCopper, bound);
        return gap.signum() == 0
                ? best.layout.withCost(Status.LEAST, gap, cost, settled(best.layout, Optional.empty()))
                : best.layout.withCost(Status.BEST_FOUND, gap, cost, settled(best.layout, priced.unproven()));
    }

    /** Its findings, with what is to be told of the proof of its cost in place of that of its copper. */
    private static List<Finding> settled(Layout layout, Optional<Finding> unproven) {
        return Stream.concat(
                        layout.findings().stream()
                                .filter(finding -> !finding.rule().equals(Rule.PROOF.section())),
                        unproven.stream())
                .toList();
    }

    private static Interconnection.Priced searchLeastCost(Site site, RouteLimits limits) {
        try {
            return Interconnection.findLeastCost(
                            site, limits.untold().forNetwork().withShareOfTime(SHARE_OF_COST))
                    .orElseThrow(NothingFoundException::new);
        } catch (ArithmeticException overflow) {
            throw new TooFineException(overflow);
        }
    }

    /** An answer, and what it costs by its take-off alone. */
    private record TakenOff(Layout layout, Total total) {
        static TakenOff of(Site site, Layout layout, PriceBook prices) {
            TakeOff takeOff = TakingOff.of(site, layout, Optional.of(prices));
            return new TakenOff(
                    layout, takeOff.total().orElseThrow(() -> new MissingPriceException(takeOff.missing())));
        }

        ExactMoney exact() {
            return total.exact();
        }
    }

    private static Cost cost(String currency, Total total, TakenOff leastCopper, ExactMoney bound) {
        return new Cost(
                currency,
                total.total(),
                total.material(),
                total.labor(),
                total.crossings(),
                total.rounding(),
                bound.rounded(),
                leastCopper.layout.copper().map(Copper::weight).orElseThrow(),
                leastCopper.total.total(),
                leastCopper.layout.status());
    }

    /**
     * What the question asks of a site: the least copper or the least cost, of the site as it supposes it.
     *
     * @throws MissingPriceException as {@link #leastCost}; so the others
     */
    public static Layout of(Site site, Question question, RouteLimits limits) {
        Site supposed = question.suppose(site);
        return question.objective() == Objective.COST ? leastCost(supposed, limits) : of(supposed, limits);
    }

    /** Rounded up to 0.01, so that a gap is never rounded away. */
    private static BigDecimal gapPercent(ExactMoney cost, ExactMoney bound) {
        BigDecimal above = cost.grains().subtract(bound.grains());
        if (above.signum() == 0) {
            return BigDecimal.ZERO;
        }
        BigDecimal least = bound.grains().max(ExactMoney.of(Money.ofCents(1)).grains());
        return above.movePointRight(2).divide(least, 2, RoundingMode.CEILING);
    }
}
