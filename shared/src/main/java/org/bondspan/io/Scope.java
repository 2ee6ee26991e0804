package org.bondspan.io;

import java.util.List;

/**
 * What all readers of one file share.
 *
 * @param noun what the file is: {@code "site"}
 * @param levels the ids of the site's levels
 */
record Scope(
        String noun,
        Problems problems,
        Values values,
        PlaceSurvey survey,
        Ids ids,
        Sources sources,
        List<String> levels) {
    Scope {
        levels = List.copyOf(levels);
    }
}
