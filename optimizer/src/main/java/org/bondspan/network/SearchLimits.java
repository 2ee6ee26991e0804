package org.bondspan.network;

import java.math.BigInteger;
import java.time.Duration;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.bondspan.solve.Limits;
import org.bondspan.units.Weight;

/**
 * How long to look for the least tie. With a time limit or a stop the answer may differ from run to run; without,
 * never.
 *
 * @param time empty for as long as the proof takes
 * @param stop asked now and then; true ends the search with the best tie so far
 * @param progress is told of better ties and bounds, on the thread of the search
 */
public record SearchLimits(Optional<Duration> time, BooleanSupplier stop, Progress progress) {

    /** Hears of a search while it runs. Jumpers around breaks are not in these weights. */
    @FunctionalInterface
    public interface Progress {
        void report(Weight best, Weight bound);
    }

    public static SearchLimits none() {
        return new SearchLimits(Optional.empty(), () -> false, (best, bound) -> {});
    }

    Limits forSolver(RouteProblem problem) {
        Limits limits = Limits.none()
                .until(stop)
                .telling((best, bound) -> progress.report(weight(best, problem), weight(bound, problem)));
        return time.map(limits::within).orElse(limits);
    }

    private static Weight weight(long inUnits, RouteProblem problem) {
        return new Weight(BigInteger.valueOf(inUnits).multiply(BigInteger.valueOf(problem.lengthUnit())));
    }
}
