package org.bondspan.sheet.plan;

import java.util.List;
import org.bondspan.site.PlanPoint;

/**
 * Words that belong to an item; where they stand depends on the view.
 *
 * @param id of the item
 * @param lines its words, one line each
 * @param anchors places that it may point to, the best first; at least one
 */
public record Note(String id, Layer layer, Kind kind, List<String> lines, List<PlanPoint> anchors) {
    public Note {
        lines = List.copyOf(lines);
        anchors = List.copyOf(anchors);
    }

    /** What notes are, in the order in which they get their places. */
    public enum Kind {
        SERVICE,
        ELECTRODE,
        CONDUCTOR,
        KEYNOTE,
        JOINT,
        PLACE,
        PATH
    }
}
