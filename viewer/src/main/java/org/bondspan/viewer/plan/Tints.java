package org.bondspan.viewer.plan;

import javafx.scene.paint.Color;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;

/** The colours of the drawing code as JavaFX has them. */
final class Tints {
    private Tints() {}

    static Color colour(Palette palette, Tint tint) {
        java.awt.Color colour = palette.of(tint);
        return Color.rgb(colour.getRed(), colour.getGreen(), colour.getBlue());
    }
}
