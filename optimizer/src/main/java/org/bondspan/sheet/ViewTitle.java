package org.bondspan.sheet;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.units.LengthUnit;

/** What stands below a view: its title, its scale in words, a graphic scale that survives reduction, north. */
record ViewTitle(String title, DrawingScale scale, LengthUnit unit, double size) {
    private static final double LONGEST_BAR = 190;
    private static final double GAP = 30;

    /** What a bar and the north take beside the title, in sizes of letters. */
    private static final double BESIDE = 17;

    /** A title has this much room even where nothing is left beside it, in sizes of letters. */
    private static final double LEAST_TITLE = 12;

    /** Height that it takes below the view. */
    double height() {
        return 4.2 * size;
    }

    /** Paints it with its upper left corner there, in so much width; a title too long for it is cut. */
    void paint(Graphics2D g, double x, double y, double width) {
        g.setColor(Palette.LIGHT.of(Tint.INK));
        double letters = 1.4 * size;
        double room = Math.max(LEAST_TITLE * size, width - GAP - BESIDE * size);
        String shown = Typeface.fitted(Typeface.printable(title), letters, room);
        double words = Math.max(Typeface.width(shown, letters), Typeface.width("SCALE  " + scale.words(), size));
        Typeface.draw(g, shown, x, y + letters * 1.1, letters);
        g.setStroke(new BasicStroke(1.2f));
        g.draw(new Line2D.Double(x, y + letters * 1.45, x + words, y + letters * 1.45));
        Typeface.draw(g, "SCALE  " + scale.words(), x, y + letters * 1.45 + 1.25 * size, size);
        double bar = x + words + GAP;
        double end = bar(g, bar, y + letters, Math.min(LONGEST_BAR, width - words - GAP - 11 * size));
        north(g, end + 3 * size, y + 2 * size, 1.5 * size);
    }

    /** Four alternating fields of a round length; gives where it ends. */
    private double bar(Graphics2D g, double x, double y, double room) {
        double unitPoints = unit.nanometres() * scale.pointsPerNanometre();
        double field = roundBelow(Math.max(room, 8) / unitPoints / 4);
        double points = field * unitPoints;
        double high = 0.45 * size;
        g.setStroke(new BasicStroke(0.7f));
        for (int i = 0; i < 4; i++) {
            Rectangle2D box = new Rectangle2D.Double(x + i * points, y, points, high);
            if (i % 2 == 0) {
                g.fill(box);
            }
            g.draw(box);
        }
        double letters = 0.85 * size;
        for (int i = 0; i <= 4; i += 2) {
            String number = BigDecimal.valueOf(i * field).stripTrailingZeros().toPlainString();
            String words = i == 4 ? number + " " + unit.symbol() : number;
            Typeface.draw(
                    g, words, x + i * points - Typeface.width(number, letters) / 2, y + high + letters * 1.1, letters);
        }
        return x + 4 * points + Typeface.width(" " + unit.symbol() + "0000", letters);
    }

    /** The largest of 1, 2 and 5 times a power of ten that is no larger. */
    private static double roundBelow(double length) {
        double power = Math.pow(10, Math.floor(Math.log10(length)));
        double first = length / power;
        return power * (first >= 5 ? 5 : first >= 2 ? 2 : 1);
    }

    private static void north(Graphics2D g, double x, double y, double radius) {
        g.setStroke(new BasicStroke(0.8f));
        g.draw(new Ellipse2D.Double(x - radius * 0.7, y - radius * 0.7, radius * 1.4, radius * 1.4));
        Path2D half = new Path2D.Double();
        half.moveTo(x, y - radius);
        half.lineTo(x + radius * 0.45, y + radius * 0.6);
        half.lineTo(x, y + radius * 0.3);
        half.closePath();
        g.fill(half);
        Path2D other = new Path2D.Double();
        other.moveTo(x, y - radius);
        other.lineTo(x - radius * 0.45, y + radius * 0.6);
        other.lineTo(x, y + radius * 0.3);
        g.draw(other);
        double letters = radius * 0.75;
        Typeface.draw(g, "N", x + radius * 0.85, y - radius * 0.3, letters);
    }
}
