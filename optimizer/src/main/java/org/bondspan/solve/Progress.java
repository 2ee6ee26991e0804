package org.bondspan.solve;

/** Hears of a search while it runs, on the thread of the search. */
@FunctionalInterface
public interface Progress {

    /**
     * Something is better known than before.
     *
     * @param bestWeight weight of the best tree so far
     * @param lowerBound proven: no tree weighs less
     */
    void report(long bestWeight, long lowerBound);
}
