package org.bondspan.viewer.state;

import java.nio.file.Path;
import org.bondspan.site.Site;
import org.bondspan.usecase.Question;

/**
 * An opened site file.
 *
 * @param digest SHA-256 of its text
 * @param site as the file and the opened price book have it
 * @param question what the switches ask
 * @param unrouted the site as drawn, before it is routed
 */
public record Opened(Path path, String digest, Site site, Question question, Plan unrouted) {
    /** The same site, asked something else. */
    public Opened asking(Question next) {
        return new Opened(path, digest, site, next, unrouted);
    }

    /** The name of the file without its endings, for naming others after it. */
    public String stem() {
        String stem = String.valueOf(path.getFileName()).replaceFirst("(\\.site)?\\.json$", "");
        return stem.isEmpty() ? "site" : stem;
    }
}
