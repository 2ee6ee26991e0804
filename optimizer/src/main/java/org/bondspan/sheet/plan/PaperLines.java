package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of a picture is in the way of words, on paper. */
final class PaperLines {
    /** Lines are painted no further from their true places, in points. */
    private static final double FAR = 40;

    /** So much further off is what the eye takes for further off, beside letters of 8 points. */
    private static final double CLEARLY = 1;

    private static final double BESIDE = 8;

    private final SegmentGrid conductors = new SegmentGrid();
    private final SegmentGrid walls = new SegmentGrid();
    private final SegmentGrid others = new SegmentGrid();
    private final List<Rectangle2D> symbols = new ArrayList<>();
    private final OwnedLines ofConductors = new OwnedLines();
    private final OwnedLines ofWays = new OwnedLines();
    private final double scale;

    /** In a view with letters of that size. */
    PaperLines(Picture picture, PlanView view, double letters) {
        this.scale = Symbol.scale(letters);
        for (Item item : picture.items()) {
            if (item instanceof Item.Mark mark) {
                addSymbol(mark, view.of(mark.at()));
            } else if (item instanceof Item.Run run) {
                addRun(run, view);
            } else {
                addLines(item.places().stream().map(view::of).toList(), others, view);
            }
        }
    }

    private void addRun(Item.Run run, PlanView view) {
        List<Point2D> places = BesidePath.of(run, view, scale);
        List<Line2D> lines = addLines(places, grid(run), view);
        if (places.size() == 1 && view.frame().contains(places.get(0))) {
            lines.add(new Line2D.Double(places.get(0), places.get(0)));
        }
        findKin(run.layer()).ifPresent(kin -> lines.forEach(line -> kin.add(run.id(), line)));
    }

    /** What words of that layer could be mistaken to belong to. */
    private Optional<OwnedLines> findKin(Layer layer) {
        return switch (layer) {
            case CONDUCTORS -> Optional.of(ofConductors);
            case ALLOWED_COPPER -> Optional.of(ofWays);
            default -> Optional.empty();
        };
    }

    private SegmentGrid grid(Item.Run run) {
        if (run.layer() == Layer.CONDUCTORS) {
            return conductors;
        }
        return run.kind() == LineKind.WALL ? walls : others;
    }

    private void addSymbol(Item.Mark mark, Point2D at) {
        double half = scale * mark.symbol().size() / 2;
        if (mark.symbol() == Symbol.COLUMN) {
            others.add(new Line2D.Double(at.getX() - half, at.getY() - half, at.getX() + half, at.getY() + half));
        } else {
            symbols.add(new Rectangle2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half));
        }
    }

    private static List<Line2D> addLines(List<Point2D> places, SegmentGrid grid, PlanView view) {
        List<Line2D> lines = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            Clip.within(view.frame(), places.get(i - 1), places.get(i)).ifPresent(lines::add);
        }
        lines.forEach(grid::add);
        return lines;
    }

    /** The place nearest to that one on a conductor as painted; that one itself where the conductor is far. */
    Point2D onConductor(String id, Point2D near) {
        Point2D best = near;
        double distance = FAR;
        for (Line2D line : ofConductors.of(id)) {
            double own = line.ptSegDist(near);
            if (own < distance) {
                distance = own;
                best = nearest(line, near);
            }
        }
        return best;
    }

    private static Point2D nearest(Line2D line, Point2D to) {
        double dx = line.getX2() - line.getX1();
        double dy = line.getY2() - line.getY1();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((to.getX() - line.getX1()) * dx + (to.getY() - line.getY1()) * dy) / square;
        double share = Math.max(0, Math.min(1, along));
        return new Point2D.Double(line.getX1() + share * dx, line.getY1() + share * dy);
    }

    /** Whether words there are clearly nearer to what they belong to than to anything else of its kind. */
    boolean isNearestToIts(Note note, Rectangle2D box) {
        return findKin(note.layer())
                .map(kin -> kin.isNearest(note.id(), box, CLEARLY * scale))
                .orElse(true);
    }

    /** Whether words there stand as near to something else of the kind as its own words would. */
    boolean isBesideAnother(Note note, Rectangle2D box) {
        return findKin(note.layer())
                .map(kin -> kin.isOtherWithin(note.id(), box, BESIDE * scale))
                .orElse(false);
    }

    List<Rectangle2D> symbols() {
        return symbols;
    }

    boolean crossesConductor(Rectangle2D box) {
        return conductors.crossing(box) > 0;
    }

    int conductorsCrossing(Line2D line) {
        return conductors.crossing(line);
    }

    /** The lines that words would stand on; a wall counts for several. */
    double cost(Rectangle2D box) {
        return others.crossing(box) + 4.0 * walls.crossing(box);
    }
}
