package org.bondspan.sheet;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.Layout;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.sheet.table.Wrap;

/**
 * The strip at the right edge of a sheet: what it shows of which site, under which edition, with blanks that people
 * fill in. It bears no date of its own, so that the same input gives the same sheet.
 */
final class TitleBlock {
    /** Words that take more lines are cut: blanks for people and the sheet number keep their room. */
    private static final int MOST_LINES = 8;

    private final SheetContent content;
    private final Rectangle2D box;
    private final double size;
    private double y;

    TitleBlock(SheetContent content, Rectangle2D box, double size) {
        this.content = content;
        this.box = box;
        this.size = size;
    }

    /** Paints it for a sheet of that number and title. */
    void paint(Graphics2D g, String number, String title, String scale) {
        Layout layout = content.layout();
        g.setColor(Palette.LIGHT.of(Tint.INK));
        g.setStroke(new BasicStroke(1.2f));
        g.draw(box);
        y = box.getY();
        words(g, "PROJECT", content.site().name(), 1.5 * size);
        words(g, "SHEET", title, 1.25 * size);
        words(g, "SCALE", scale, size);
        words(g, "CODE", "NFPA 70, " + layout.codeEdition().year() + " edition", size);
        words(
                g,
                "ADOPTION",
                content.site().adoption().isBlank()
                        ? "not stated"
                        : content.site().adoption(),
                size);
        words(g, "ANSWER", Verdict.of(layout, "keynotes"), size);
        words(
                g,
                "STATUS",
                "Design aid, not for construction until reviewed and signed by a licensed professional",
                size);
        blanks(g, number);
    }

    private void words(Graphics2D g, String heading, String words, double letters) {
        double small = 0.72 * size;
        double pad = 0.6 * size;
        g.setColor(Palette.LIGHT.of(Tint.GREY));
        Typeface.draw(g, heading, box.getX() + pad, y + pad + small * 0.8, small);
        g.setColor(Palette.LIGHT.of(Tint.INK));
        y += pad + small * 0.9;
        for (String line : Wrap.lines(Typeface.printable(words), letters, box.getWidth() - 2 * pad, MOST_LINES)) {
            Typeface.draw(g, line, box.getX() + pad, y + letters, letters);
            y += Typeface.leading(letters);
        }
        y += 0.7 * size;
        line(g, y);
    }

    /** Revisions, signatures, seal and number fill the strip from its lower end. */
    private void blanks(Graphics2D g, String number) {
        double row = 1.9 * size;
        double bottom = box.getMaxY();
        List<String> machine = machine();
        double small = 0.72 * size;
        bottom -= 3.6 * size;
        line(g, bottom);
        caption(g, "SHEET NO.", bottom);
        Typeface.draw(g, number, box.getX() + 0.6 * size, bottom + 3.1 * size, 2 * size);
        bottom -= machine.size() * Typeface.leading(small) + 0.8 * size;
        for (int i = 0; i < machine.size(); i++) {
            Typeface.draw(
                    g,
                    machine.get(i),
                    box.getX() + 0.6 * size,
                    bottom + small * 1.3 + i * Typeface.leading(small),
                    small);
        }
        line(g, bottom);
        for (String blank : new String[] {"APPROVED", "CHECKED", "DRAWN", "DATE", "REVISION"}) {
            bottom -= row;
            line(g, bottom);
            caption(g, blank, bottom);
        }
        double revisions = Math.min(6 * row, Math.max(0, (bottom - y) * 0.4));
        int rows = (int) (revisions / row);
        for (int i = 0; i < rows; i++) {
            bottom -= row;
            line(g, bottom);
        }
        if (rows > 0) {
            caption(g, "REV.    DATE           BY        WHAT CHANGED", bottom);
        }
        if (bottom - y > 3 * size) {
            caption(g, "SEAL", y);
        }
    }

    private List<String> machine() {
        List<String> lines = new ArrayList<>();
        double small = 0.72 * size;
        double width = box.getWidth() - 1.2 * size;
        lines.addAll(Wrap.lines("Site file SHA-256 " + content.digest(), small, width));
        lines.addAll(Wrap.lines(Typeface.printable(content.program()), small, width));
        return lines;
    }

    private void caption(Graphics2D g, String words, double top) {
        g.setColor(Palette.LIGHT.of(Tint.GREY));
        Typeface.draw(g, words, box.getX() + 0.6 * size, top + 1.1 * size, 0.72 * size);
        g.setColor(Palette.LIGHT.of(Tint.INK));
    }

    private void line(Graphics2D g, double at) {
        g.setStroke(new BasicStroke(0.6f));
        g.draw(new Line2D.Double(box.getMinX(), at, box.getMaxX(), at));
    }
}
