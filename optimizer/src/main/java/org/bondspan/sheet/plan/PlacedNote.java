package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * A note with its place, in points.
 *
 * @param lines what is written there: the words, or a number that stands for them
 * @param shape how the box is drawn
 * @param leader from what it belongs to, where it stands apart
 */
public record PlacedNote(Note note, List<String> lines, Shape shape, Rectangle2D box, Optional<Line2D> leader) {
    public PlacedNote {
        lines = List.copyOf(lines);
    }

    /** Words stand free; findings are numbered in hexagons, words that found no room in circles. */
    public enum Shape {
        WORDS,
        HEXAGON,
        CIRCLE
    }
}
