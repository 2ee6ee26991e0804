package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for notes: beside what they belong to, else further off with a leader, else as a number that a schedule
 * explains. Boxes never overlap each other, symbols or conductors; thin lines are avoided. Words of a conductor, or of
 * a line for copper, that have no leader are nearer to it than to any other. Notes come in the order given, each takes
 * the cheapest place left. Lengths in points.
 */
final class NotePlacer {
    private static final double[] RINGS = {0, 7, 16, 28, 44, 64, 90, 124, 165};
    private static final int DIRECTIONS = 16;
    private static final double PADDING = 1.5;

    /** From the middle of a symbol, or from a line, to the nearest words; symbols beside letters of 8 points. */
    private static final double FROM_SYMBOL = 10;

    private static final double FROM_LINE = 4;

    /** How much further off words may stand so that their leader crosses one conductor less. */
    private static final double ACROSS_CONDUCTOR = 18;

    /** The same so that they do not stand beside another conductor. */
    private static final double BESIDE_ANOTHER = 16;

    private final PlanView view;
    private final double size;
    private final double fromSymbol;
    private final int firstNumber;
    private final BoxGrid taken = new BoxGrid();
    private final SegmentGrid leaders = new SegmentGrid();
    private final PaperLines lines;
    private final List<PlacedNote> placed = new ArrayList<>();
    private final List<Note> numbered = new ArrayList<>();

    private NotePlacer(Picture picture, PlanView view, List<Rectangle2D> reserved, double size, int firstNumber) {
        this.view = view;
        this.size = size;
        this.fromSymbol = FROM_SYMBOL * Symbol.scale(size);
        this.firstNumber = firstNumber;
        this.lines = new PaperLines(picture, view, size);
        lines.symbols().forEach(taken::add);
        reserved.forEach(taken::add);
    }

    /** Places notes as {@link PlacedPlan#of} has it. */
    static PlacedPlan place(
            Picture picture,
            PlanView view,
            List<Note> notes,
            List<Rectangle2D> reserved,
            double size,
            int firstNumber) {
        NotePlacer placer = new NotePlacer(picture, view, reserved, size, firstNumber);
        notes.forEach(placer::place);
        return new PlacedPlan(picture, view, placer.placed, firstNumber, placer.numbered);
    }

    private void place(Note note) {
        PlacedNote.Shape shape = note.kind() == Note.Kind.KEYNOTE ? PlacedNote.Shape.HEXAGON : PlacedNote.Shape.WORDS;
        List<String> words = note.lines().stream()
                .map(line -> Typeface.fitted(Typeface.printable(line), size, 26 * size))
                .toList();
        if (!tryPlace(note, shape, words)) {
            numbered.add(note);
            int number = firstNumber + numbered.size() - 1;
            tryPlace(note, PlacedNote.Shape.CIRCLE, List.of(String.valueOf(number)));
        }
    }

    private boolean tryPlace(Note note, PlacedNote.Shape shape, List<String> words) {
        Rectangle2D box = box(shape, words);
        Optional<Candidate> best = best(note, box.getWidth(), box.getHeight());
        best.ifPresent(candidate -> {
            taken.add(candidate.box());
            candidate.leader().ifPresent(leaders::add);
            placed.add(new PlacedNote(note, words, shape, candidate.box(), candidate.leader()));
        });
        return best.isPresent();
    }

    private Rectangle2D box(PlacedNote.Shape shape, List<String> words) {
        double width = words.stream()
                .mapToDouble(line -> Typeface.width(line, size))
                .max()
                .orElse(0);
        if (shape != PlacedNote.Shape.WORDS) {
            double side = Math.max(width + 0.8 * size, 1.7 * size);
            return new Rectangle2D.Double(0, 0, side, 1.7 * size);
        }
        double height = Typeface.leading(size) * (words.size() - 1) + size;
        return new Rectangle2D.Double(0, 0, width + 2 * PADDING, height + 2 * PADDING);
    }

    private record Candidate(Rectangle2D box, Optional<Line2D> leader, double cost) {}

    private Optional<Candidate> best(Note note, double width, double height) {
        Optional<Candidate> best = Optional.empty();
        double nearest = isOfLine(note) ? FROM_LINE : fromSymbol;
        if (note.kind() == Note.Kind.PLACE) {
            best = inTheMiddle(note, width, height);
        }
        for (double ring : RINGS) {
            if (best.isPresent() && best.get().cost() <= ring) {
                return best;
            }
            for (int i = 0; i < note.anchors().size(); i++) {
                best = better(best, note, i, nearest + ring, width, height);
            }
        }
        return best;
    }

    /** A conductor without extent in plan, such as one that only rises, is a place: symbols stand there. */
    private static boolean isOfLine(Note note) {
        boolean isLine = note.kind() == Note.Kind.CONDUCTOR || note.kind() == Note.Kind.PATH;
        return isLine && note.anchors().size() > 1;
    }

    private Optional<Candidate> inTheMiddle(Note note, double width, double height) {
        return note.anchors().stream()
                .map(view::of)
                .map(at -> new Rectangle2D.Double(at.getX() - width / 2, at.getY() - height / 2, width, height))
                .filter(box -> isFree(box))
                .findFirst()
                .map(box -> new Candidate(box, Optional.empty(), lines.cost(box)));
    }

    private boolean isFree(Rectangle2D box) {
        return view.frame().contains(box)
                && !taken.overlaps(box)
                && !lines.crossesConductor(box)
                && leaders.crossing(box) == 0;
    }

    private Optional<Candidate> better(
            Optional<Candidate> known, Note note, int anchor, double distance, double width, double height) {
        double clear = isOfLine(note) ? 0 : fromSymbol + 1.5;
        double extra = 2.0 * anchor;
        Optional<Candidate> best = known;
        Point2D drawn = view.of(note.anchors().get(anchor));
        Point2D at = note.kind() == Note.Kind.CONDUCTOR ? lines.onConductor(note.id(), drawn) : drawn;
        if (!view.frame().contains(at)) {
            return known;
        }
        for (int d = 0; d < DIRECTIONS; d++) {
            double angle = 2 * Math.PI * d / DIRECTIONS;
            Rectangle2D box = beside(at, distance, angle, width, height);
            double least = distance + extra;
            if ((best.isPresent() && best.get().cost() <= least) || !isFree(box)) {
                continue;
            }
            Optional<Line2D> leader = leader(at, box, clear);
            boolean isClear = leader.isPresent() ? !taken.isCrossedBy(leader.get()) : lines.isNearestToIts(note, box);
            if (!isClear) {
                continue;
            }
            double cost = least
                    + 4 * lines.cost(box)
                    + (lines.isBesideAnother(note, box) ? BESIDE_ANOTHER : 0)
                    + leader.map(line -> 6.0
                                    + 30 * leaders.crossing(line)
                                    + ACROSS_CONDUCTOR * lines.conductorsCrossing(line))
                            .orElse(0.0);
            if (best.isEmpty() || cost < best.get().cost()) {
                best = Optional.of(new Candidate(box, leader, cost));
            }
        }
        return best;
    }

    private static Rectangle2D beside(Point2D at, double distance, double angle, double width, double height) {
        double x = at.getX() + distance * Math.cos(angle);
        double y = at.getY() + distance * Math.sin(angle);
        double left = Math.abs(Math.cos(angle)) < 0.3 ? x - width / 2 : Math.cos(angle) > 0 ? x : x - width;
        double top = Math.abs(Math.sin(angle)) < 0.3 ? y - height / 2 : Math.sin(angle) > 0 ? y : y - height;
        return new Rectangle2D.Double(left, top, width, height);
    }

    /** From the edge of the symbol, or from the line itself, to the nearest place of the box. */
    private Optional<Line2D> leader(Point2D at, Rectangle2D box, double clear) {
        double x = Math.max(box.getMinX(), Math.min(box.getMaxX(), at.getX()));
        double y = Math.max(box.getMinY(), Math.min(box.getMaxY(), at.getY()));
        double length = at.distance(x, y);
        if (length < fromSymbol + 2) {
            return Optional.empty();
        }
        double share = clear / length;
        return Optional.of(
                new Line2D.Double(at.getX() + share * (x - at.getX()), at.getY() + share * (y - at.getY()), x, y));
    }
}
