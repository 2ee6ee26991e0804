package org.bondspan.usecase;

import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.bondspan.network.SearchLimits;
import org.bondspan.units.Weight;

/**
 * How long to look for the least interconnection. With a time limit or a stop the answer may differ from run to run;
 * without, never.
 *
 * @param time empty for as long as it takes
 * @param stop asked now and then; true ends the search with the best found so far
 * @param progress is told of better answers and bounds, on the thread of the search
 */
public record RouteLimits(Optional<Duration> time, BooleanSupplier stop, Progress progress) {

    /** Hears of a search while it runs. Jumpers around breaks in pipes are not in these weights. */
    @FunctionalInterface
    public interface Progress {
        void report(Weight best, Weight bound);
    }

    public static RouteLimits none() {
        return new RouteLimits(Optional.empty(), () -> false, (best, bound) -> {});
    }

    /** Whether there is no time left, or the search is to stop. */
    public boolean isOver() {
        return time.filter(Duration.ZERO::equals).isPresent() || stop.getAsBoolean();
    }

    /** The same, and nobody hears of it. */
    public RouteLimits untold() {
        return new RouteLimits(time, stop, none().progress());
    }

    /** The time begins now. */
    SearchLimits forNetwork() {
        return SearchLimits.from(time, stop, progress::report);
    }
}
