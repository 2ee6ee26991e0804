package org.bondspan.viewer.state;

import java.util.Optional;
import org.bondspan.units.Weight;

/**
 * Work under way beside the window.
 *
 * @param number tells works apart: what comes back from an older one no longer counts
 * @param what in words
 * @param reached how far a search has come; empty while nothing is found
 * @param stopping the search has been asked to answer with what it has
 */
public record Work(long number, String what, Optional<Reached> reached, boolean stopping) {

    /** The best weight found so far and the proven bound. */
    public record Reached(Weight best, Weight bound) {}

    public Work reaching(Weight best, Weight bound) {
        return new Work(number, what, Optional.of(new Reached(best, bound)), stopping);
    }

    /** Its next part, under another name. */
    public Work as(String part) {
        return new Work(number, part, reached, stopping);
    }

    public Work asStopping() {
        return new Work(number, what, reached, true);
    }
}
