package org.bondspan.sheet.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;

/** Paints a plan: the items of the layers that are on, then their notes. Nothing is painted outside the frame. */
public final class PlanPainter {
    private final Graphics2D g;
    private final Palette palette;

    public PlanPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
    }

    /** Paints the layers given; {@code size} of the letters is that with which the notes were placed, in points. */
    public void paint(PlacedPlan plan, Set<Layer> layers, double size) {
        Shape clip = g.getClip();
        g.clip(plan.view().frame());
        new ItemPainter(g, palette, plan.view(), size).paint(plan.picture(), layers);
        List<PlacedNote> shown = plan.notes().stream()
                .filter(note -> layers.contains(note.note().layer()))
                .toList();
        shown.forEach(this::paintLeader);
        shown.forEach(note -> paint(note, size));
        g.setClip(clip);
    }

    private void paintLeader(PlacedNote note) {
        note.leader().ifPresent(leader -> {
            g.setColor(palette.of(Tint.INK));
            g.setStroke(new BasicStroke(0.4f));
            g.draw(leader);
        });
    }

    private void paint(PlacedNote note, double size) {
        Rectangle2D box = note.box();
        g.setColor(palette.of(Tint.PAPER));
        g.fill(shape(note));
        if (note.shape() != PlacedNote.Shape.WORDS) {
            g.setColor(palette.of(Tint.INK));
            g.setStroke(new BasicStroke(0.7f));
            g.draw(shape(note));
        }
        g.setColor(palette.of(tint(note.note())));
        boolean numbered = note.shape() != PlacedNote.Shape.WORDS;
        double top = numbered ? box.getCenterY() + Typeface.capital(size) / 2 : box.getMinY() + 1.5 + 0.85 * size;
        for (int i = 0; i < note.lines().size(); i++) {
            String line = note.lines().get(i);
            double x = numbered ? box.getCenterX() - Typeface.width(line, size) / 2 : box.getMinX() + 1.5;
            Typeface.draw(g, line, x, top + i * Typeface.leading(size), size);
        }
    }

    private static Shape shape(PlacedNote note) {
        Rectangle2D box = note.box();
        return switch (note.shape()) {
            case WORDS -> box;
            case CIRCLE -> new Ellipse2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight());
            case HEXAGON -> SymbolPainter.hexagon(box);
        };
    }

    private static Tint tint(Note note) {
        return switch (note.kind()) {
            case PATH -> note.layer() == Layer.NOT_PERMITTED ? Tint.NOT_PERMITTED : Tint.GREY;
            case PLACE -> Tint.GREY;
            default -> Tint.INK;
        };
    }
}
