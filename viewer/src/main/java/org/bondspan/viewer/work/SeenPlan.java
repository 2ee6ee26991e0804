package org.bondspan.viewer.work;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.out.Drawing;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.sheet.plan.PlanPainter;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.sheet.plan.Typeface;
import org.bondspan.viewer.plan.Labels;
import org.bondspan.viewer.plan.PlanScene;

/**
 * What is seen of a plan, as a drawing of its own: the title and a line of totals above it, the cautions below. Lengths
 * in points.
 *
 * @param title what it is a plan of
 * @param head verdict and totals, what is supposed; wrapped where they are long
 * @param foot small print
 * @param seenWidth width of the part that is seen
 */
public record SeenPlan(
        String title, List<String> head, List<String> foot, PlanScene scene, double seenWidth, double seenHeight)
        implements Drawing {
    private static final double MARGIN = 24;
    private static final double TITLE = 24;
    private static final double SIZE = 9;
    private static final double SMALL = 6.5;

    public SeenPlan {
        head = List.copyOf(head);
        foot = List.copyOf(foot);
    }

    @Override
    public double width() {
        return seenWidth + 2 * MARGIN;
    }

    @Override
    public double height() {
        return seenHeight + 2 * MARGIN + headHeight() + foot.size() * Typeface.leading(SMALL) + SMALL;
    }

    @Override
    public void paint(Graphics2D g) {
        g.setColor(scene.palette().of(Tint.PAPER));
        g.fill(new Rectangle2D.Double(0, 0, width(), height()));
        g.setColor(scene.palette().of(Tint.INK));
        double words = width() - 2 * MARGIN;
        write(g, title, MARGIN + 10, 14, words);
        double line = MARGIN + TITLE;
        for (String one : headLines()) {
            write(g, one, line, SIZE, words);
            line += Typeface.leading(SIZE);
        }
        Rectangle2D frame = new Rectangle2D.Double(MARGIN, MARGIN + headHeight(), seenWidth, seenHeight);
        paintPlan(g, frame);
        g.setColor(scene.palette().of(Tint.GREY));
        g.draw(frame);
        double y = frame.getMaxY() + SMALL + Typeface.leading(SMALL);
        for (String caution : foot) {
            write(g, caution, y, SMALL, words);
            y += Typeface.leading(SMALL);
        }
    }

    private double headHeight() {
        return TITLE + headLines().size() * Typeface.leading(SIZE);
    }

    private List<String> headLines() {
        return head.stream().flatMap(line -> wrapped(line, seenWidth).stream()).toList();
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

    private static void write(Graphics2D g, String words, double y, double size, double width) {
        Typeface.draw(g, Typeface.fitted(Typeface.printable(words), size, width), MARGIN, y, size);
    }

    private void paintPlan(Graphics2D g, Rectangle2D frame) {
        PlanView seen = scene.camera().view(seenWidth, seenHeight);
        PlanView view = new PlanView(frame, seen.pointsPerNanometre(), seen.centreX(), seen.centreY());
        List<Note> notes = scene.picture().notes().stream()
                .filter(note -> scene.layers().contains(note.layer()))
                .filter(note -> scene.labels() == Labels.SHOWN || note.layer() == Layer.KEYNOTES)
                .toList();
        PlacedPlan placed = PlacedPlan.of(scene.picture(), view, notes, List.of(), SIZE, 1);
        new PlanPainter(g, scene.palette()).paint(withoutNumbers(placed), scene.layers(), SIZE);
    }

    /** Words that found no room are left out: no schedule here would explain their numbers. */
    private static PlacedPlan withoutNumbers(PlacedPlan placed) {
        return new PlacedPlan(
                placed.picture(),
                placed.view(),
                placed.notes().stream()
                        .filter(note -> !placed.numbered().contains(note.note()))
                        .toList(),
                1,
                List.of());
    }
}
