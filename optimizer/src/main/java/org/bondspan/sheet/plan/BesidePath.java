package org.bondspan.sheet.plan;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The places on paper of a run whose stretches are painted beside their true places. A conductor begins and ends at its
 * true places all the same. Lengths in points.
 */
public final class BesidePath {
    /** A corner further off than this many times the distance is cut short. */
    private static final double SHARP = 4;

    /** A straight stretch moved aside. */
    private record Shifted(Point2D from, Point2D to) {
        static Shifted of(Point2D a, Point2D b, double aside) {
            double length = a.distance(b);
            if (length == 0 || aside == 0) {
                return new Shifted(a, b);
            }
            double kept = Math.signum(aside) * Math.min(Math.abs(aside), length / 3);
            double x = (b.getY() - a.getY()) / length * kept;
            double y = -(b.getX() - a.getX()) / length * kept;
            return new Shifted(
                    new Point2D.Double(a.getX() + x, a.getY() + y), new Point2D.Double(b.getX() + x, b.getY() + y));
        }
    }

    private BesidePath() {}

    /** Where the run lies in the view, {@code scale} times as far aside as stated. */
    public static List<Point2D> of(Item.Run run, PlanView view, double scale) {
        List<Point2D> drawn = run.places().stream().map(view::of).toList();
        if (run.aside().isEmpty()) {
            return drawn;
        }
        List<Shifted> pieces = new ArrayList<>();
        for (int i = 0; i + 1 < drawn.size(); i++) {
            pieces.add(Shifted.of(
                    drawn.get(i), drawn.get(i + 1), scale * run.aside().get(i)));
        }
        boolean reachesItsEnds = run.layer() == Layer.CONDUCTORS;
        List<Point2D> path = new ArrayList<>();
        if (reachesItsEnds) {
            add(path, drawn.get(0));
        }
        add(path, pieces.get(0).from());
        for (int i = 1; i < pieces.size(); i++) {
            corner(pieces.get(i - 1), pieces.get(i), path);
        }
        add(path, pieces.get(pieces.size() - 1).to());
        if (reachesItsEnds) {
            add(path, drawn.get(drawn.size() - 1));
        }
        return path;
    }

    private static void add(List<Point2D> path, Point2D place) {
        if (path.isEmpty() || path.get(path.size() - 1).distance(place) > 1e-6) {
            path.add(place);
        }
    }

    /** Where the two meet; a step where they run the same way. */
    private static void corner(Shifted a, Shifted b, List<Point2D> path) {
        double ax = a.to().getX() - a.from().getX();
        double ay = a.to().getY() - a.from().getY();
        double bx = b.to().getX() - b.from().getX();
        double by = b.to().getY() - b.from().getY();
        double cross = ax * by - ay * bx;
        double apart = a.to().distance(b.from());
        if (Math.abs(cross) > 1e-9 * Math.hypot(ax, ay) * Math.hypot(bx, by)) {
            double t = ((b.from().getX() - a.from().getX()) * by
                            - (b.from().getY() - a.from().getY()) * bx)
                    / cross;
            Point2D meeting =
                    new Point2D.Double(a.from().getX() + t * ax, a.from().getY() + t * ay);
            if (meeting.distance(a.to()) <= SHARP * apart + 1e-6) {
                add(path, meeting);
                return;
            }
        }
        add(path, a.to());
        add(path, b.from());
    }
}
