package org.bondspan.viewer.plan;

import java.awt.geom.Rectangle2D;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;

/**
 * Which part of a plan is looked at: a rectangle in plan units (nanometres, x east, y north) that is seen whole, and as
 * large as the pane allows. So one camera shows the same in panes of any size, and a fitted plan stays fitted.
 *
 * @param width above 0, nanometres
 * @param height above 0, nanometres
 */
public record Camera(double centreX, double centreY, double width, double height) {
    private static final double MARGIN = 0.08;

    /** Nothing is looked at more closely than 0.3 m across. */
    static final double CLOSEST = 0.3e9;

    /** Nor from further off than this many times the plan. */
    private static final double FURTHEST = 4;

    public Camera {
        if (!(width > 0) || !(height > 0) || !Double.isFinite(centreX) || !Double.isFinite(centreY)) {
            throw new IllegalArgumentException(
                    "a camera at " + centreX + ", " + centreY + " that sees " + width + " by " + height);
        }
    }

    /** Sees all of it with a margin. */
    public static Camera around(Bounds bounds) {
        double margin = 2 * MARGIN * Math.max(Math.max(bounds.width(), bounds.height()), CLOSEST);
        return new Camera(
                bounds.west() + bounds.width() / 2,
                bounds.south() + bounds.height() / 2,
                bounds.width() + margin,
                bounds.height() + margin);
    }

    /** Where plan places lie in a pane of so many pixels. */
    public PlanView view(double paneWidth, double paneHeight) {
        return new PlanView(
                new Rectangle2D.Double(0, 0, paneWidth, paneHeight),
                Math.min(paneWidth / width, paneHeight / height),
                centreX,
                centreY);
    }

    /** Closer by a factor, or further off where it is below 1; the place stays where it is on the screen. */
    public Camera zoomed(double factor, PlanPoint fixed) {
        return new Camera(
                fixed.x() + (centreX - fixed.x()) / factor,
                fixed.y() + (centreY - fixed.y()) / factor,
                width / factor,
                height / factor);
    }

    /** Closer by a factor at the place in the middle. */
    public Camera zoomed(double factor) {
        return new Camera(centreX, centreY, width / factor, height / factor);
    }

    /** Moved east and north, in nanometres. */
    public Camera moved(double east, double north) {
        return new Camera(centreX + east, centreY + north, width, height);
    }

    /** Sees all of it with some room about: moved no further than needed, and further off only where it must be. */
    public Camera revealing(Bounds bounds) {
        double off = Math.max(1, Math.max(bounds.width() / (0.9 * width), bounds.height() / (0.9 * height)));
        Camera wide = zoomed(1 / off);
        double roomX = Math.max(0, (0.9 * wide.width - bounds.width()) / 2);
        double roomY = Math.max(0, (0.9 * wide.height - bounds.height()) / 2);
        double x = bounds.west() + bounds.width() / 2;
        double y = bounds.south() + bounds.height() / 2;
        return new Camera(
                clamp(wide.centreX, x - roomX, x + roomX),
                clamp(wide.centreY, y - roomY, y + roomY),
                wide.width,
                wide.height);
    }

    /**
     * The nearest camera that neither loses the plan out of sight nor comes closer or goes further off than is of use.
     */
    public Camera within(Bounds plan) {
        Camera whole = around(plan);
        double tooFar = Math.max(width / whole.width, height / whole.height) / FURTHEST;
        double tooClose = Math.max(width, height) / CLOSEST;
        Camera held = zoomed(tooFar > 1 ? tooFar : Math.min(1, tooClose));
        return new Camera(
                clamp(held.centreX, (double) plan.west(), (double) plan.east()),
                clamp(held.centreY, (double) plan.south(), (double) plan.north()),
                held.width,
                held.height);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
