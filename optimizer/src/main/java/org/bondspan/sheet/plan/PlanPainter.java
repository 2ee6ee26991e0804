package org.bondspan.sheet.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import org.bondspan.site.PlanPoint;

/** Paints a plan: the items of the layers that are on, then their notes. Nothing is painted outside the frame. */
public final class PlanPainter {
    private static final double HATCH = 9;

    private final Graphics2D g;
    private final Palette palette;
    private final SymbolPainter symbols;
    private final LinePainter lines;

    public PlanPainter(Graphics2D g, Palette palette) {
        this.g = g;
        this.palette = palette;
        this.symbols = new SymbolPainter(g, palette);
        this.lines = new LinePainter(g, palette);
    }

    /** Paints the layers given; {@code size} of the letters is that with which the notes were placed, in points. */
    public void paint(PlacedPlan plan, Set<Layer> layers, double size) {
        Shape clip = g.getClip();
        g.clip(plan.view().frame());
        for (Item item : plan.picture().items()) {
            if (layers.contains(item.layer())) {
                paint(item, plan.view());
            }
        }
        List<PlacedNote> shown = plan.notes().stream()
                .filter(note -> layers.contains(note.note().layer()))
                .toList();
        shown.forEach(this::paintLeader);
        shown.forEach(note -> paint(note, size));
        g.setClip(clip);
    }

    private void paint(Item item, PlanView view) {
        if (item instanceof Item.Area area) {
            paint(area, view);
        } else if (item instanceof Item.Run run) {
            lines.paint(run.pen(), run.places().stream().map(view::of).toList(), view.frame());
        } else if (item instanceof Item.Mark mark) {
            Point2D at = view.of(mark.at());
            if (view.frame().contains(at)) {
                symbols.paint(mark.symbol(), mark.letters(), at);
            }
        }
    }

    private void paint(Item.Area area, PlanView view) {
        Path2D outline = new Path2D.Double();
        for (PlanPoint place : area.places()) {
            Point2D at = view.of(place);
            if (outline.getCurrentPoint() == null) {
                outline.moveTo(at.getX(), at.getY());
            } else {
                outline.lineTo(at.getX(), at.getY());
            }
        }
        outline.closePath();
        g.setColor(palette.of(Tint.PALE));
        g.fill(outline);
        g.setColor(palette.of(Tint.GREY));
        g.setStroke(new BasicStroke(0.25f));
        hatch(outline, outline.getBounds2D().createIntersection(view.frame()));
        g.setStroke(new BasicStroke(0.7f));
        g.draw(outline);
    }

    /** Strokes at 45 degrees, cut at the outline. */
    private void hatch(Shape outline, Rectangle2D seen) {
        if (seen.isEmpty()) {
            return;
        }
        Shape clip = g.getClip();
        g.clip(outline);
        for (double x = seen.getMinX() - seen.getHeight(); x < seen.getMaxX(); x += HATCH) {
            g.draw(new Line2D.Double(x, seen.getMaxY(), x + seen.getHeight(), seen.getMinY()));
        }
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
