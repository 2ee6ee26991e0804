package org.bondspan.usecase;

import java.time.Duration;

/** Limits shared by several searches, one after the other: each has the time that those before it left. */
public final class Countdown {
    private final RouteLimits limits;
    private final long start = System.nanoTime();

    private Countdown(RouteLimits limits) {
        this.limits = limits;
    }

    /** Begins to count now. */
    public static Countdown of(RouteLimits limits) {
        return new Countdown(limits);
    }

    /** The limits with what is left of the time, none at the end. */
    public RouteLimits left() {
        Duration spent = Duration.ofNanos(System.nanoTime() - start);
        return new RouteLimits(
                limits.time().map(time -> time.compareTo(spent) > 0 ? time.minus(spent) : Duration.ZERO),
                limits.stop(),
                limits.progress());
    }
}
