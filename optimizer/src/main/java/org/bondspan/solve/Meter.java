package org.bondspan.solve;

import java.util.function.Supplier;

/** Counts what a search takes, and ends it by {@link SpentException} when that is more than its limits allow. */
final class Meter {

    private static final int STEPS_BETWEEN_LOOKS = 1 << 12;

    private final Limits limits;
    private final long work;
    private long done;
    private long lookAt;
    private long held;
    private long best = Long.MAX_VALUE;
    private long lowerBound;

    private Meter(Limits limits, long work) {
        this.limits = limits;
        this.work = work;
    }

    static Meter of(Limits limits) {
        return new Meter(limits, Long.MAX_VALUE);
    }

    /** A meter of its own that also allows only so many steps: the same number on every machine. */
    Meter withWork(long steps) {
        return new Meter(limits.telling(this::tell), steps);
    }

    /** A meter of its own that allows only a share of the time that is left, where there is a deadline. */
    Meter withShareOfTime(double share) {
        return new Meter(limits.telling(this::tell).withShareOfTime(share), work);
    }

    /** A meter of its own for a part, beside which the best tree known weighs this, and no tree less than the bound. */
    Meter beside(long weight, long bound) {
        return new Meter(limits.telling((more, moreBound) -> tell(weight + more, bound + moreBound)), work);
    }

    private void tell(long weight, long bound) {
        found(weight);
        proven(bound);
    }

    /** A meter for a search of something else, of which nothing is reported. */
    Meter forPart(long steps) {
        return new Meter(limits.telling((weight, bound) -> {}), steps);
    }

    /** About to take some steps, each about as long as settling a node. */
    void spend(long steps) {
        done += steps;
        if (done >= lookAt) {
            lookAt = done + STEPS_BETWEEN_LOOKS;
            if (done > work) {
                throw new SpentException(SpentException.What.WORK);
            }
            if (limits.isOver()) {
                throw new SpentException(SpentException.What.TIME);
            }
        }
    }

    /** About to allocate tables. */
    void hold(long bytes) {
        held += bytes;
        if (held > limits.memoryBytes()) {
            throw new SpentException(SpentException.What.MEMORY);
        }
    }

    /**
     * Runs a search. What it takes is estimated before; where an estimate was too low after all, the search ends like
     * any other for which memory does not suffice, as nothing but it holds its tables.
     */
    <T> T run(Supplier<T> search) {
        try {
            return search.get();
        } catch (OutOfMemoryError error) {
            throw new SpentException(SpentException.What.MEMORY);
        }
    }

    /** Tables are let go. */
    void release(long bytes) {
        held -= bytes;
    }

    boolean isOver() {
        return limits.isOver();
    }

    boolean isTimed() {
        return limits.isTimed();
    }

    /** A tree of this weight is known. */
    void found(long weight) {
        if (weight < best) {
            best = weight;
            report();
        }
    }

    /** No tree weighs less than this. */
    void proven(long bound) {
        if (bound > lowerBound) {
            lowerBound = bound;
            report();
        }
    }

    private void report() {
        if (best < Long.MAX_VALUE) {
            limits.progress().report(best, lowerBound);
        }
    }
}
