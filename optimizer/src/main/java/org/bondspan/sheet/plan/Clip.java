package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;

/** Cuts straight lines at the edges of a frame (Liang and Barsky, ACM Transactions on Graphics 3, 1984). */
public final class Clip {
    private Clip() {}

    /** The part of the line inside the frame, if any. */
    public static Optional<Line2D> within(Rectangle2D frame, Point2D a, Point2D b) {
        double dx = b.getX() - a.getX();
        double dy = b.getY() - a.getY();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {
            a.getX() - frame.getMinX(),
            frame.getMaxX() - a.getX(),
            a.getY() - frame.getMinY(),
            frame.getMaxY() - a.getY()
        };
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < p.length; i++) {
            if (p[i] == 0 && q[i] < 0) {
                return Optional.empty();
            }
            if (p[i] < 0) {
                enter = Math.max(enter, q[i] / p[i]);
            } else if (p[i] > 0) {
                leave = Math.min(leave, q[i] / p[i]);
            }
        }
        return enter > leave
                ? Optional.empty()
                : Optional.of(new Line2D.Double(
                        a.getX() + enter * dx, a.getY() + enter * dy, a.getX() + leave * dx, a.getY() + leave * dy));
    }
}
