package org.bondspan.io;

import java.util.List;

/**
 * What all readers of one file share.
 *
 * @param levels the ids of the site's levels
 */
record Scope(Problems problems, Values values, PlaceSurvey survey, Ids ids, Sources sources, List<String> levels) {
    Scope {
        levels = List.copyOf(levels);
    }
}
