package org.bondspan.viewer.state;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.sheet.plan.Picture;

/**
 * A proposal for the opened site, with what its review found.
 *
 * @param pictures of the proposal, by id of the level
 */
public record Reviewed(Path path, Proposal proposal, ReviewOutcome outcome, Map<String, Picture> pictures) {
    public Reviewed {
        pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
    }
}
