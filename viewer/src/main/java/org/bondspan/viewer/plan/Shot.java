package org.bondspan.viewer.plan;

import java.util.Set;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.PlanView;

/**
 * One painting of a picture.
 *
 * @param view in pixels as JavaFX counts them, from 0, 0
 * @param outputScale pixels of the screen to one of those
 * @param words placed for this view
 */
record Shot(PlanView view, double outputScale, Palette palette, Set<Layer> layers, Lettering words) {
    int pixelWidth() {
        return (int) Math.ceil(view.frame().getWidth() * outputScale);
    }

    int pixelHeight() {
        return (int) Math.ceil(view.frame().getHeight() * outputScale);
    }
}
