package org.bondspan.sheet.plan;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import org.bondspan.site.PlanPoint;

/**
 * From plan to paper or screen: a frame in points and the part of the plan that is seen through it.
 *
 * @param pointsPerNanometre scale; y is turned round, as paper counts downwards
 * @param centreX plan place in the middle of the frame, nanometres
 */
public record PlanView(Rectangle2D frame, double pointsPerNanometre, double centreX, double centreY) {
    /** The frame with the middle of the bounds in its own middle. */
    public static PlanView centred(Rectangle2D frame, double pointsPerNanometre, Bounds bounds) {
        return new PlanView(
                frame, pointsPerNanometre, bounds.west() + bounds.width() / 2, bounds.south() + bounds.height() / 2);
    }

    public Point2D of(PlanPoint place) {
        return new Point2D.Double(
                frame.getCenterX() + (place.x() - centreX) * pointsPerNanometre,
                frame.getCenterY() - (place.y() - centreY) * pointsPerNanometre);
    }

    /** The plan place that is seen there, to the nearest nanometre. */
    public PlanPoint placeAt(Point2D at) {
        return new PlanPoint(
                Math.round(centreX + (at.getX() - frame.getCenterX()) / pointsPerNanometre),
                Math.round(centreY - (at.getY() - frame.getCenterY()) / pointsPerNanometre));
    }
}
