package org.bondspan.network;

import java.math.BigInteger;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import org.bondspan.solve.Limits;
import org.bondspan.units.Weight;

/**
 * How long to look for the least tie, all that comes before and after the search included. With a deadline or a stop
 * the answer may differ from run to run; without, never.
 *
 * @param deadline in the time of {@link System#nanoTime()}; empty for as long as the proof takes
 * @param stop asked now and then; true ends the search with the best tie so far
 * @param progress is told of better ties and bounds, on the thread of the search
 */
public record SearchLimits(OptionalLong deadline, BooleanSupplier stop, Progress progress) {

    /** Of the time that is left when the search begins; the rest is for making its tree straight. */
    private static final double SHARE_OF_SEARCH = 0.95;

    /** Hears of a search while it runs. Jumpers around breaks are not in these weights. */
    @FunctionalInterface
    public interface Progress {
        void report(Weight best, Weight bound);
    }

    public static SearchLimits none() {
        return from(Optional.empty(), () -> false, (best, bound) -> {});
    }

    /** With this much time from now on. */
    public static SearchLimits from(Optional<Duration> time, BooleanSupplier stop, Progress progress) {
        OptionalLong deadline = time.map(limit -> OptionalLong.of(System.nanoTime() + limit.toNanos()))
                .orElseGet(OptionalLong::empty);
        return new SearchLimits(deadline, stop, progress);
    }

    /** The same with this share of the time that is left. */
    public SearchLimits withShareOfTime(double share) {
        return from(timeLeft(share), stop, progress);
    }

    private Optional<Duration> timeLeft(double share) {
        return deadline.isEmpty()
                ? Optional.empty()
                : Optional.of(Duration.ofNanos((long) (share * (deadline.getAsLong() - System.nanoTime()))));
    }

    boolean isOver() {
        return stop.getAsBoolean() || (deadline.isPresent() && System.nanoTime() - deadline.getAsLong() >= 0);
    }

    Limits forSolver(RouteProblem problem) {
        Limits limits = Limits.none()
                .until(stop)
                .telling((best, bound) -> progress.report(weight(best, problem), weight(bound, problem)));
        return timeLeft(SHARE_OF_SEARCH).map(limits::within).orElse(limits);
    }

    private static Weight weight(long inUnits, RouteProblem problem) {
        return new Weight(BigInteger.valueOf(inUnits).multiply(BigInteger.valueOf(problem.lengthUnit())));
    }
}
