package org.bondspan.solve;

import java.time.Duration;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;

/**
 * How long a search may go on, and what it may take. Whatever the limits, a search answers: with the best that it has
 * found. With a deadline or a stop the answer depends on the speed of the machine; without, never.
 *
 * @param deadline in the time of {@link System#nanoTime()}; empty for no limit of time
 * @param stop asked now and then; true ends the search
 * @param memoryBytes most that the tables of the exact search may take
 * @param progress is told of better trees and bounds
 */
public record Limits(OptionalLong deadline, BooleanSupplier stop, long memoryBytes, Progress progress) {

    /** No limit of time, half of the memory that Java may take, and nobody listens. */
    public static Limits none() {
        return new Limits(
                OptionalLong.empty(),
                () -> false,
                Runtime.getRuntime().maxMemory() / 2,
                (bestWeight, lowerBound) -> {});
    }

    /** The same, with a deadline this long from now. */
    public Limits within(Duration time) {
        return new Limits(OptionalLong.of(System.nanoTime() + time.toNanos()), stop, memoryBytes, progress);
    }

    /** The same, ended when asked for. */
    public Limits until(BooleanSupplier newStop) {
        return new Limits(deadline, newStop, memoryBytes, progress);
    }

    /** The same with this much memory for tables. */
    public Limits withMemory(long bytes) {
        return new Limits(deadline, stop, bytes, progress);
    }

    /** The same with a listener. */
    public Limits telling(Progress listener) {
        return new Limits(deadline, stop, memoryBytes, listener);
    }

    /** The same with a deadline that leaves only a share of the time from now on. */
    Limits withShareOfTime(double share) {
        if (deadline.isEmpty()) {
            return this;
        }
        long now = System.nanoTime();
        long left = (long) (share * (deadline.getAsLong() - now));
        return new Limits(OptionalLong.of(now + left), stop, memoryBytes, progress);
    }

    boolean isOver() {
        return (deadline.isPresent() && System.nanoTime() - deadline.getAsLong() >= 0) || stop.getAsBoolean();
    }

    boolean isTimed() {
        return deadline.isPresent();
    }
}
