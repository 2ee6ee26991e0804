package org.bondspan.viewer.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;

/**
 * Tells what lies under a pointer: a symbol that it stands on, else the nearest conductor within reach, else the
 * nearest other line or symbol, else the area that it stands in. Of what lies equally near, what was painted last.
 */
public final class PickIndex {
    /** What is painted reaches no further from its places than this, in points. */
    private static final double FARTHEST = 28;

    private final SegmentIndex index;

    public PickIndex(Picture picture) {
        this(new SegmentIndex(picture));
    }

    PickIndex(SegmentIndex index) {
        this.index = index;
    }

    /**
     * The id of what lies there.
     *
     * @param at in pixels of the view
     * @param reach how far off a line may be, in pixels
     */
    public Optional<String> find(Point2D at, PlanView view, Set<Layer> layers, double reach) {
        double wide = reach + FARTHEST * Magnification.PIXELS_PER_POINT;
        PlanPoint one = view.placeAt(new Point2D.Double(at.getX() - wide, at.getY() + wide));
        PlanPoint other = view.placeAt(new Point2D.Double(at.getX() + wide, at.getY() - wide));
        List<Hit> hits = index.near(new Bounds(one.x(), one.y(), other.x(), other.y())).stream()
                .filter(item -> layers.contains(item.layer()))
                .map(item -> hit(item, at, view, reach))
                .filter(hit -> hit.distance() <= reach)
                .toList();
        return IntStream.range(0, hits.size())
                .boxed()
                .min(Comparator.<Integer, Order>comparing(i -> hits.get(i).order())
                        .thenComparing(i -> hits.get(i).distance())
                        .thenComparing(i -> -i))
                .map(i -> hits.get(i).id());
    }

    private enum Order {
        SYMBOL_UNDER_POINTER,
        CONDUCTOR,
        OTHER,
        AREA
    }

    private record Hit(String id, Order order, double distance) {}

    private static Hit hit(Item item, Point2D at, PlanView view, double reach) {
        if (item instanceof Item.Mark mark) {
            double half = mark.symbol().size() / 2 * Magnification.PIXELS_PER_POINT;
            double beyond = Math.max(0, view.of(mark.at()).distance(at) - half);
            return new Hit(mark.id(), beyond == 0 ? Order.SYMBOL_UNDER_POINTER : Order.OTHER, beyond);
        }
        if (item instanceof Item.Area area) {
            return new Hit(area.id(), Order.AREA, outline(area, view).contains(at) ? 0 : reach + 1);
        }
        return new Hit(
                item.id(),
                item.layer() == Layer.CONDUCTORS ? Order.CONDUCTOR : Order.OTHER,
                item instanceof Item.Run run ? distance(DrawnLine.of(run, view), at) : reach + 1);
    }

    private static double distance(List<Point2D> places, Point2D at) {
        double nearest = Double.POSITIVE_INFINITY;
        Point2D from = places.get(0);
        for (Point2D to : places) {
            nearest = Math.min(
                    nearest, Line2D.ptSegDist(from.getX(), from.getY(), to.getX(), to.getY(), at.getX(), at.getY()));
            from = to;
        }
        return nearest;
    }

    private static Path2D outline(Item.Area area, PlanView view) {
        Path2D path = new Path2D.Double();
        Point2D start = view.of(area.places().get(0));
        path.moveTo(start.getX(), start.getY());
        for (PlanPoint place : area.places()) {
            Point2D next = view.of(place);
            path.lineTo(next.getX(), next.getY());
        }
        path.closePath();
        return path;
    }
}
