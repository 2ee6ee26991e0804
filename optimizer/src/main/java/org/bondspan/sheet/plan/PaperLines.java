package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What of a picture is in the way of words, on paper. */
final class PaperLines {
    private final SegmentGrid conductors = new SegmentGrid();
    private final SegmentGrid walls = new SegmentGrid();
    private final SegmentGrid others = new SegmentGrid();
    private final List<Rectangle2D> symbols = new ArrayList<>();

    PaperLines(Picture picture, PlanView view) {
        for (Item item : picture.items()) {
            if (item instanceof Item.Mark mark) {
                addSymbol(mark, view.of(mark.at()));
            } else if (item instanceof Item.Run run) {
                addLines(item, grid(run), view);
            } else {
                addLines(item, others, view);
            }
        }
    }

    private SegmentGrid grid(Item.Run run) {
        if (run.layer() == Layer.CONDUCTORS) {
            return conductors;
        }
        return run.kind() == LineKind.WALL ? walls : others;
    }

    private void addSymbol(Item.Mark mark, Point2D at) {
        double half = mark.symbol().size() / 2;
        if (mark.symbol() == Symbol.COLUMN) {
            others.add(new Line2D.Double(at.getX() - half, at.getY() - half, at.getX() + half, at.getY() + half));
        } else {
            symbols.add(new Rectangle2D.Double(at.getX() - half, at.getY() - half, 2 * half, 2 * half));
        }
    }

    private static void addLines(Item item, SegmentGrid grid, PlanView view) {
        for (int i = 1; i < item.places().size(); i++) {
            Clip.within(
                            view.frame(),
                            view.of(item.places().get(i - 1)),
                            view.of(item.places().get(i)))
                    .ifPresent(grid::add);
        }
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
