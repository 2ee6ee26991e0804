package org.bondspan.viewer.plan;

import java.awt.geom.Point2D;
import java.util.List;
import org.bondspan.sheet.plan.BesidePath;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Symbol;

/** Where a line is painted: beside its true place where others lie upon it. */
final class DrawnLine {
    private DrawnLine() {}

    /** Its places in pixels of the view. */
    static List<Point2D> of(Item.Run run, PlanView view) {
        return BesidePath.of(run, view, Symbol.scale(Lettering.SIZE) * Magnification.PIXELS_PER_POINT);
    }
}
