package org.bondspan.viewer.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;

/**
 * The words on a plan, placed for one view. While the camera moves they move along; once it rests they are placed anew.
 *
 * @param view for which they were placed, in points
 * @param crowds where one note stands for all that lies there
 */
record Lettering(PlanView view, List<PlacedNote> notes, Crowds crowds) {
    /** Height of letters, in points. */
    static final double SIZE = 8;

    /**
     * Room that a note takes with what it needs about it, in square points: so many fit in a view before it is full.
     */
    private static final double ROOM = 140 * 60;

    Lettering {
        notes = List.copyOf(notes);
    }

    static Lettering none(PlanView pixels) {
        return new Lettering(Magnification.inPoints(pixels), List.of(), Crowds.NONE);
    }

    /**
     * Finds places for what is worth saying in a view in pixels; takes long on a crowded plan.
     *
     * @param ofCrowds what stands below the words of each crowd
     */
    static Lettering place(
            PlanRaster raster,
            Picture picture,
            PlanView pixels,
            Set<Layer> layers,
            Labels labels,
            List<String> ofCrowds) {
        PlanView view = Magnification.inPoints(pixels);
        Picture seen = new Picture(
                picture.level(),
                raster.seen(pixels).stream()
                        .filter(item -> layers.contains(item.layer()))
                        .toList(),
                List.of());
        Crowds crowds = CrowdFinder.find(seen, view);
        List<Note> notes = new ArrayList<>();
        if (labels == Labels.SHOWN) {
            crowds.all().forEach(crowd -> notes.add(crowd.note(ofCrowds)));
        }
        notes.addAll(worthSaying(picture, view, layers, labels, crowds));
        List<Rectangle2D> reserved = new ArrayList<>();
        reserved.add(Magnification.inPoints(ScaleBar.room(pixels.frame().getHeight())));
        crowds.all().forEach(crowd -> reserved.add(crowd.in(view)));
        PlacedPlan plan = PlacedPlan.of(seen, view, notes, reserved, SIZE, 1);
        return new Lettering(
                view,
                plan.notes().stream()
                        .filter(note -> note.shape() != PlacedNote.Shape.CIRCLE)
                        .toList(),
                crowds);
    }

    /** Where there is not room for all, what is too small to be seen has no words either. */
    private static List<Note> worthSaying(
            Picture picture, PlanView view, Set<Layer> layers, Labels labels, Crowds crowds) {
        long most = (long) Math.max(1, view.frame().getWidth() * view.frame().getHeight() / ROOM);
        List<Note> all = picture.notes().stream()
                .filter(note -> layers.contains(note.layer()))
                .filter(note -> labels == Labels.SHOWN || note.kind() == Note.Kind.KEYNOTE)
                .filter(note -> isSeen(note, view) || crowds.apart().contains(note.id()))
                .filter(note -> !crowds.standFor(note))
                .sorted(Comparator.comparing(note -> note.kind() != Note.Kind.KEYNOTE))
                .toList();
        return all.stream()
                .filter(note -> all.size() <= most || isSeen(note, view))
                .limit(most)
                .map(crowds::asPlaced)
                .toList();
    }

    private static boolean isSeen(Note note, PlanView view) {
        boolean inView = note.anchors().stream().anyMatch(at -> view.frame().contains(view.of(at)));
        boolean ofLine = note.kind() == Note.Kind.PATH || note.kind() == Note.Kind.CONDUCTOR;
        return inView && (!ofLine || extent(note, view) >= Crowds.SHORTEST);
    }

    private static double extent(Note note, PlanView view) {
        if (note.anchors().size() == 1) {
            return Crowds.SHORTEST;
        }
        Bounds bounds = Bounds.around(note.anchors());
        return Math.max(bounds.width(), bounds.height()) * view.pointsPerNanometre();
    }

    /** The same words for another view in pixels, each as far from its place as before. */
    Lettering moved(PlanView pixels) {
        PlanView other = Magnification.inPoints(pixels);
        if (other.equals(view)) {
            return this;
        }
        List<PlacedNote> moved = new ArrayList<>();
        for (PlacedNote note : notes) {
            PlanPoint anchor = anchor(note);
            Point2D was = view.of(anchor);
            Point2D is = other.of(anchor);
            moved.add(shifted(note, is.getX() - was.getX(), is.getY() - was.getY()));
        }
        return new Lettering(other, moved, crowds);
    }

    private PlanPoint anchor(PlacedNote note) {
        Point2D middle = new Point2D.Double(note.box().getCenterX(), note.box().getCenterY());
        return note.note().anchors().stream()
                .min(Comparator.comparingDouble(at -> view.of(at).distance(middle)))
                .orElseThrow();
    }

    private static PlacedNote shifted(PlacedNote note, double right, double down) {
        Rectangle2D box = note.box();
        Optional<Line2D> leader = note.leader()
                .map(line -> new Line2D.Double(
                        line.getX1() + right, line.getY1() + down, line.getX2() + right, line.getY2() + down));
        return new PlacedNote(
                note.note(),
                note.lines(),
                note.shape(),
                new Rectangle2D.Double(box.getX() + right, box.getY() + down, box.getWidth(), box.getHeight()),
                leader);
    }

    /** What the words at a place in pixels belong to; nothing where they are those of a crowd. */
    Optional<String> find(Point2D pixels) {
        return findNote(pixels).filter(note -> findCrowd(note).isEmpty()).map(Note::id);
    }

    /** The crowd whose words stand at a place in pixels. */
    Optional<Crowd> findCrowd(Point2D pixels) {
        return findNote(pixels).flatMap(this::findCrowd);
    }

    private Optional<Crowd> findCrowd(Note note) {
        return crowds.all().stream().filter(crowd -> crowd.isOf(note)).findFirst();
    }

    private Optional<Note> findNote(Point2D pixels) {
        double x = pixels.getX() / Magnification.PIXELS_PER_POINT;
        double y = pixels.getY() / Magnification.PIXELS_PER_POINT;
        return notes.stream()
                .filter(note -> note.box().contains(x, y))
                .findFirst()
                .map(PlacedNote::note);
    }
}
