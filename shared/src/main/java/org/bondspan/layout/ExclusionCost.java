package org.bondspan.layout;

import java.util.Optional;

/**
 * What a site would need if one path that may not carry did: it shows what the exclusion costs and is no advice.
 *
 * @param path that may not carry
 * @param outcome whether the answer was proven in the time that there was
 * @param copper of the least interconnection with it; empty where there is none even so, or where it was not computed
 */
public record ExclusionCost(String path, Outcome outcome, Optional<Copper> copper) {

    /** How a supposition ended. */
    public enum Outcome {
        /** The least copper with that path is known. */
        LEAST,
        /** There is no interconnection even with that path. */
        IMPOSSIBLE,
        /** Time ran out, or the search ended without proof. */
        NOT_COMPUTED
    }
}
