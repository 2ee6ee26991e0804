package org.bondspan.viewer.plan;

import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;

/** The scale bar, half filled and half empty, with its length above; its lower left corner is at 0, 0. */
final class ScaleBarNode extends Group {
    private final Rectangle plate = new Rectangle();
    private final Rectangle bar = new Rectangle(0, -ScaleBar.HEIGHT, 0, ScaleBar.HEIGHT);
    private final Rectangle filled = new Rectangle(0, -ScaleBar.HEIGHT, 0, ScaleBar.HEIGHT);
    private final Text words = new Text(0, -ScaleBar.HEIGHT - 5, "");

    ScaleBarNode() {
        getChildren().addAll(plate, bar, filled, words);
        setMouseTransparent(true);
        setId("scale-bar");
        words.setFont(Font.font(ScaleBar.LETTERS));
        plate.setOpacity(0.85);
    }

    void show(ScaleBar scale, Palette palette) {
        Color ink = Tints.colour(palette, Tint.INK);
        plate.setFill(Tints.colour(palette, Tint.PAPER));
        bar.setFill(Tints.colour(palette, Tint.PAPER));
        bar.setStroke(ink);
        filled.setFill(ink);
        words.setFill(ink);
        words.setText(scale.words());
        bar.setWidth(scale.pixels());
        filled.setWidth(scale.pixels() / 2);
        double width = Math.max(scale.pixels(), words.getLayoutBounds().getWidth());
        plate.setX(-6);
        plate.setY(-ScaleBar.HEIGHT - 22);
        plate.setWidth(width + 12);
        plate.setHeight(ScaleBar.HEIGHT + 28);
    }
}
