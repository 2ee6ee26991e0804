package org.bondspan.io;

import java.util.List;
import org.bondspan.io.json.Node;
import org.bondspan.site.Level;
import org.bondspan.site.Site;
import org.bondspan.units.LengthUnit;

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

    /** For a file about a site, with lengths in its own unit or else in that of the site. */
    static Scope about(Site site, String noun, Node.Struct root, Problems problems) {
        LengthUnit unit = FileRoot.findUnit(root).orElse(site.lengthUnit());
        return new Scope(
                noun,
                problems,
                new Values(unit, problems),
                PlaceSurvey.of(root, unit),
                SiteIds.of(site),
                new Sources(),
                site.levels().stream().map(Level::id).toList());
    }
}
