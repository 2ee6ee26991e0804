package org.bondspan.sheet.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import org.bondspan.site.PlanPoint;

/** Paints the items of a picture in a view. */
final class ItemPainter {
    private static final double HATCH = 9;

    private final Graphics2D g;
    private final Palette palette;
    private final PlanView view;
    private final double scale;
    private final SymbolPainter symbols;
    private final LinePainter lines;

    ItemPainter(Graphics2D g, Palette palette, PlanView view, double letters) {
        this.g = g;
        this.palette = palette;
        this.view = view;
        this.scale = Symbol.scale(letters);
        this.symbols = new SymbolPainter(g, palette, letters);
        this.lines = new LinePainter(g, palette, letters);
    }

    /** Those of the layers given, in their order; the ground of all conductors is cleared before the first of them. */
    void paint(Picture picture, Set<Layer> layers) {
        List<Item> shown = picture.items().stream()
                .filter(item -> layers.contains(item.layer()))
                .toList();
        boolean isCleared = false;
        for (Item item : shown) {
            if (item.layer() == Layer.CONDUCTORS && !isCleared) {
                isCleared = true;
                shown.forEach(this::clear);
            }
            paint(item);
        }
    }

    private void clear(Item item) {
        if (item instanceof Item.Run run && run.layer() == Layer.CONDUCTORS) {
            lines.clear(run.pen(), BesidePath.of(run, view, scale), view.frame());
        }
    }

    private void paint(Item item) {
        if (item instanceof Item.Area area) {
            paint(area);
        } else if (item instanceof Item.Run run) {
            lines.paint(run.pen(), BesidePath.of(run, view, scale), view.frame());
        } else if (item instanceof Item.Mark mark) {
            Point2D at = view.of(mark.at());
            if (view.frame().contains(at)) {
                symbols.paint(mark.symbol(), mark.letters(), at);
            }
        }
    }

    private void paint(Item.Area area) {
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
}
