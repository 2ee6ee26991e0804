package org.bondspan.sheet.plan;

import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A picture in a view with its notes in place: no two of their boxes overlap, and all lie within the frame.
 *
 * @param numbered words that found no room, the first with the number {@code firstNumber}; each stands in the plan as
 *     its number, or not at all where not even that has room
 */
public record PlacedPlan(Picture picture, PlanView view, List<PlacedNote> notes, int firstNumber, List<Note> numbered) {
    public PlacedPlan {
        notes = List.copyOf(notes);
        numbered = List.copyOf(numbered);
    }

    /**
     * Places notes of a picture, in their order.
     *
     * @param reserved where no note may stand, in points
     * @param size of the letters, in points
     * @param firstNumber of the first note that becomes a number
     */
    public static PlacedPlan of(
            Picture picture,
            PlanView view,
            List<Note> notes,
            List<Rectangle2D> reserved,
            double size,
            int firstNumber) {
        return NotePlacer.place(picture, view, notes, reserved, size, firstNumber);
    }
}
