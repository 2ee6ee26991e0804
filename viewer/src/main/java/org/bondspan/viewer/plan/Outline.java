package org.bondspan.viewer.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.bondspan.sheet.plan.Clip;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;

/**
 * Where something stands out on the screen, in pixels.
 *
 * @param lines pieces of its lines, cut just outside the frame
 * @param circles about its symbols
 */
record Outline(List<Line2D> lines, List<Circle> circles) {
    private static final double BEYOND = 40;

    /** A circle about a symbol. */
    record Circle(double x, double y, double radius) {}

    Outline {
        lines = List.copyOf(lines);
        circles = List.copyOf(circles);
    }

    /** Of all items with an id that are shown. */
    static Outline of(List<Item> items, PlanView view, Set<Layer> layers) {
        List<Line2D> lines = new ArrayList<>();
        List<Circle> circles = new ArrayList<>();
        for (Item item : items) {
            if (!layers.contains(item.layer())) {
                continue;
            }
            if (item instanceof Item.Mark mark) {
                Point2D at = view.of(mark.at());
                circles.add(new Circle(
                        at.getX(), at.getY(), mark.symbol().size() / 2 * Magnification.PIXELS_PER_POINT + 4));
            } else if (item instanceof Item.Run run) {
                lines.addAll(cut(DrawnLine.of(run, view), view.frame()));
            } else {
                List<PlanPoint> closed = new ArrayList<>(item.places());
                closed.add(item.places().get(0));
                lines.addAll(pieces(closed, view));
            }
        }
        return new Outline(lines, circles);
    }

    /** A line through these places as far as it is seen. */
    static List<Line2D> pieces(List<PlanPoint> places, PlanView view) {
        return cut(places.stream().map(view::of).toList(), view.frame());
    }

    private static List<Line2D> cut(List<Point2D> places, Rectangle2D frame) {
        Rectangle2D wide = new Rectangle2D.Double(
                frame.getX() - BEYOND,
                frame.getY() - BEYOND,
                frame.getWidth() + 2 * BEYOND,
                frame.getHeight() + 2 * BEYOND);
        List<Line2D> pieces = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            Clip.within(wide, places.get(i - 1), places.get(i)).ifPresent(pieces::add);
        }
        return pieces;
    }
}
