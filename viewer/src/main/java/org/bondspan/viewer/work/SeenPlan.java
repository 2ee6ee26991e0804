package org.bondspan.viewer.work;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.viewer.plan.PlanScene;
import org.bondspan.viewer.plan.SceneOnPaper;

/**
 * The plans that are seen, side by side, as a drawing of its own: the title above them, the cautions below. Lengths in
 * points.
 *
 * @param title what they are plans of
 * @param parts from left to right; at least one
 * @param foot small print
 */
public record SeenPlan(String title, List<Part> parts, List<String> foot) implements Drawing {
    private static final double MARGIN = 24;
    private static final double BETWEEN = 14;
    private static final double TITLE = 24;
    private static final double SIZE = 9;
    private static final double SMALL = 6.5;

    /**
     * One plan.
     *
     * @param head verdict and totals, what is supposed; wrapped where they are long
     * @param width of the part that is seen
     */
    public record Part(List<String> head, PlanScene scene, double width, double height) {
        public Part {
            head = List.copyOf(head);
        }

        private List<String> headLines() {
            return head.stream().flatMap(line -> wrapped(line, width).stream()).toList();
        }
    }

    public SeenPlan {
        parts = List.copyOf(parts);
        foot = List.copyOf(foot);
    }

    @Override
    public double width() {
        return parts.stream().mapToDouble(Part::width).sum() + (parts.size() - 1) * BETWEEN + 2 * MARGIN;
    }

    @Override
    public double height() {
        double highest = parts.stream().mapToDouble(Part::height).max().orElse(0);
        return highest + 2 * MARGIN + headHeight() + foot.size() * Typeface.leading(SMALL) + SMALL;
    }

    @Override
    public void paint(Graphics2D g) {
        Palette palette = parts.get(0).scene().palette();
        g.setColor(palette.of(Tint.PAPER));
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        g.setColor(palette.of(Tint.INK));
        double words = width() - 2 * MARGIN;
        write(g, title, MARGIN, MARGIN + 10, 14, words);
        double x = MARGIN;
        for (Part part : parts) {
            paint(g, part, x);
            x += part.width() + BETWEEN;
        }
        g.setColor(palette.of(Tint.INK));
        double y = height() - MARGIN - (foot.size() - 1) * Typeface.leading(SMALL);
        for (String caution : foot) {
            write(g, caution, MARGIN, y, SMALL, words);
            y += Typeface.leading(SMALL);
        }
    }

    private void paint(Graphics2D g, Part part, double x) {
        g.setColor(part.scene().palette().of(Tint.INK));
        double line = MARGIN + TITLE;
        for (String one : part.headLines()) {
            write(g, one, x, line, SIZE, part.width());
            line += Typeface.leading(SIZE);
        }
        Rectangle2D frame = new Rectangle2D.Double(x, MARGIN + headHeight(), part.width(), part.height());
        SceneOnPaper.paint(g, part.scene(), frame);
        g.setColor(part.scene().palette().of(Tint.GREY));
        g.setStroke(new BasicStroke(0.5f));
        g.draw(frame);
    }

    /** Of all plans the same, so that they stand at one height. */
    private double headHeight() {
        int lines =
                parts.stream().mapToInt(part -> part.headLines().size()).max().orElse(0);
        return TITLE + lines * Typeface.leading(SIZE);
    }

    /** Broken after commas where it is wider. */
    private static List<String> wrapped(String words, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Typeface.printable(words).split(", ", -1)) {
            String longer = line.isEmpty() ? word : line + ", " + word;
            if (!line.isEmpty() && Typeface.width(longer, SIZE) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    private static void write(Graphics2D g, String words, double x, double y, double size, double width) {
        Typeface.draw(g, Typeface.fitted(Typeface.printable(words), size, width), x, y, size);
    }
}
