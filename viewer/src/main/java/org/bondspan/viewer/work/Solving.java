package org.bondspan.viewer.work;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Objective;
import org.bondspan.layout.Status;
import org.bondspan.price.MissingPriceException;
import org.bondspan.site.Site;
import org.bondspan.units.Money;
import org.bondspan.usecase.RouteLimits;
import org.bondspan.usecase.RouteSite;
import org.bondspan.usecase.TakeOffSite;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Command;
import org.bondspan.viewer.state.Opened;
import org.bondspan.viewer.state.Plan;

/** Answers questions. */
final class Solving {
    private static final long NANOSECONDS_BETWEEN_REPORTS = 100_000_000;

    private Solving() {}

    /**
     * The answer to the question of an opened site, drawn.
     *
     * @param progress hears ten times a second at most; makes its command from the number of the work
     * @throws MissingPriceException where the least cost is asked for and there are no prices
     */
    static Answer of(Opened opened, BooleanSupplier stop, Consumer<LongFunction<Command>> progress) {
        if (opened.question().objective() == Objective.COST
                && opened.site().prices().isEmpty()) {
            throw new MissingPriceException(
                    List.of("The least cost takes prices, and the site has none. Open a price book first."));
        }
        AtomicLong last = new AtomicLong(System.nanoTime() - NANOSECONDS_BETWEEN_REPORTS);
        RouteLimits limits = new RouteLimits(Optional.empty(), stop, (best, bound) -> {
            long now = System.nanoTime();
            if (now - last.get() >= NANOSECONDS_BETWEEN_REPORTS) {
                last.set(now);
                progress.accept(number -> Asking.reached(number, best, bound));
            }
        });
        Site supposed = opened.question().suppose(opened.site());
        Layout layout = RouteSite.of(opened.site(), opened.question(), limits);
        return new Answer(opened.question(), Plan.routed(supposed, layout, findCost(supposed, layout)));
    }

    private static Optional<Money> findCost(Site site, Layout layout) {
        if (layout.status() == Status.IMPOSSIBLE || site.prices().isEmpty()) {
            return Optional.empty();
        }
        return layout.cost().map(Cost::total).or(() -> TakeOffSite.findCost(site, layout));
    }
}
