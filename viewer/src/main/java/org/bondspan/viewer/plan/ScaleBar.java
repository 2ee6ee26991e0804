package org.bondspan.viewer.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/**
 * A round length and how long it is on the screen.
 *
 * @param pixels its length
 * @param words the round length with its unit, such as {@code 20 ft}
 */
record ScaleBar(double pixels, String words) {
    private static final double LONGEST = 160;
    /** From the left of the pane and from its foot to the bar, its height, and the letters above it, in pixels. */
    static final double LEFT = 20;

    static final double FOOT = 16;
    static final double HEIGHT = 6;
    static final double LETTERS = 12;
    private static final double HIGH = 46;
    private static final int[] STEPS = {5, 2, 1};

    /** What it may take up in a pane of that height, in pixels; no words stand there. */
    static Rectangle2D room(double paneHeight) {
        return new Rectangle2D.Double(0, paneHeight - HIGH, LEFT + LONGEST + LEFT, HIGH);
    }

    /** The longest bar of 1, 2 or 5 times a power of ten that is at most 160 pixels. */
    static ScaleBar of(PlanView view, LengthUnit unit) {
        double perUnit = view.pointsPerNanometre() * unit.nanometres();
        int power = (int) Math.floor(Math.log10(LONGEST / perUnit));
        for (int step : STEPS) {
            BigDecimal length = BigDecimal.valueOf(step).scaleByPowerOfTen(power);
            double pixels = length.doubleValue() * perUnit;
            if (pixels <= LONGEST) {
                return new ScaleBar(pixels, Numbers.rounded(length).toPlainString() + " " + unit.symbol());
            }
        }
        throw new IllegalStateException("no round length for " + perUnit + " pixels to the unit");
    }

    /** Paints it as the pane shows it, at the lower left of a frame so high; all in points. */
    void paint(Graphics2D g, double frameHeight, Palette palette) {
        double length = pixels / Magnification.PIXELS_PER_POINT;
        double left = LEFT / Magnification.PIXELS_PER_POINT;
        double foot = frameHeight - FOOT / Magnification.PIXELS_PER_POINT;
        double high = HEIGHT / Magnification.PIXELS_PER_POINT;
        g.setColor(palette.of(Tint.PAPER));
        g.fill(Magnification.inPoints(room(frameHeight * Magnification.PIXELS_PER_POINT)));
        g.setColor(palette.of(Tint.INK));
        g.setStroke(new BasicStroke(0.75f));
        g.draw(new Rectangle2D.Double(left, foot - high, length, high));
        g.fill(new Rectangle2D.Double(left, foot - high, length / 2, high));
        Typeface.draw(g, words, left, foot - high - 4, LETTERS / Magnification.PIXELS_PER_POINT);
    }
}
