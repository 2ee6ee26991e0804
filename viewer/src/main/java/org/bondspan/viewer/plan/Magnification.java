package org.bondspan.viewer.plan;

import java.awt.geom.Rectangle2D;
import org.bondspan.sheet.plan.PlanView;

/**
 * How large the drawing code's points are on a screen: CSS pixels, as JavaFX counts them, are 1/96 in, points 1/72 in
 * (CSS Values and Units Module Level 3, 6.2).
 */
final class Magnification {
    static final double PIXELS_PER_POINT = 96.0 / 72;

    private Magnification() {}

    /** The same view in points. */
    static PlanView inPoints(PlanView pixels) {
        return new PlanView(
                inPoints(pixels.frame()),
                pixels.pointsPerNanometre() / PIXELS_PER_POINT,
                pixels.centreX(),
                pixels.centreY());
    }

    /** The same rectangle in points. */
    static Rectangle2D inPoints(Rectangle2D pixels) {
        return new Rectangle2D.Double(
                pixels.getX() / PIXELS_PER_POINT,
                pixels.getY() / PIXELS_PER_POINT,
                pixels.getWidth() / PIXELS_PER_POINT,
                pixels.getHeight() / PIXELS_PER_POINT);
    }
}
