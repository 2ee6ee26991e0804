package org.bondspan.viewer.plan;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;

/**
 * Conductors that are too short in a view to be told from the symbols at their ends. A box stands around them, with one
 * note in place of the words of all that lies in it.
 *
 * @param bounds around the conductors
 * @param conductors their ids, in the order of the answer
 * @param ends ids of services and electrodes that lie there
 * @param box what it takes up in the view, in plan units
 */
record Crowd(Bounds bounds, List<String> conductors, List<String> ends, Bounds box) {
    /** From the conductors to the box, so that symbols at their ends lie inside; in points. */
    static final double AROUND = 12;

    private static final int MOST_NAMED = 10;

    Crowd {
        conductors = List.copyOf(conductors);
        ends = List.copyOf(ends);
    }

    /** Whether its note stands for another: all that the other may point to lies there. */
    boolean standsFor(Note note) {
        return note.kind() != Note.Kind.KEYNOTE && note.anchors().stream().allMatch(box::contains);
    }

    /** Its words, with more below them; they may point to the middle of each side. */
    Note note(List<String> more) {
        long x = box.west() + Math.round(box.width() / 2);
        long y = box.south() + Math.round(box.height() / 2);
        String count = conductors.size() + " conductors";
        List<String> words = Stream.of(
                        Stream.of(ends.size() > MOST_NAMED ? ends.size() + " ends" : String.join(", ", ends)),
                        Stream.of(
                                conductors.size() > MOST_NAMED ? count : count + ": " + String.join(", ", conductors)),
                        more.stream())
                .flatMap(lines -> lines)
                .filter(line -> !line.isEmpty())
                .toList();
        return new Note(
                name(),
                Layer.CONDUCTORS,
                Note.Kind.CONDUCTOR,
                words,
                List.of(
                        new PlanPoint(box.east(), y),
                        new PlanPoint(box.west(), y),
                        new PlanPoint(x, box.north()),
                        new PlanPoint(x, box.south())));
    }

    private String name() {
        return "crowd " + conductors.get(0);
    }

    /** Whether those are its own words. */
    boolean isOf(Note note) {
        return note.id().equals(name());
    }

    /** The box in a view. */
    Rectangle2D in(PlanView view) {
        Point2D southWest = view.of(new PlanPoint(box.west(), box.south()));
        Point2D northEast = view.of(new PlanPoint(box.east(), box.north()));
        return new Rectangle2D.Double(
                southWest.getX(),
                northEast.getY(),
                northEast.getX() - southWest.getX(),
                southWest.getY() - northEast.getY());
    }
}
