package org.bondspan.viewer.plan;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlacedNote;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.sheet.plan.PlanPainter;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;

/** Paints what a camera sees of a picture into pixels, with the drawing code of the sheets. Any thread. */
final class PlanRaster {
    /** Symbols and pens reach so far beyond their places, in pixels. */
    private static final double REACH = 48;

    /** As the sheets show what they enlarge. */
    private static final BasicStroke CALL_OUT =
            new BasicStroke(0.9f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4f, new float[] {6f, 3f}, 0f);

    private static final int[] MASKS = {0x00FF0000, 0x0000FF00, 0x000000FF, 0xFF000000};

    private final SegmentIndex index;

    PlanRaster(SegmentIndex index) {
        this.index = index;
    }

    /** A new image of the shot. */
    BufferedImage image(Shot shot) {
        int[] pixels = new int[shot.pixelWidth() * shot.pixelHeight()];
        return paint(shot, pixels);
    }

    /** Paints over premultiplied ARGB pixels, row by row from the top; the image returned is a view of them. */
    BufferedImage paint(Shot shot, int[] pixels) {
        BufferedImage image = over(pixels, shot.pixelWidth(), shot.pixelHeight());
        Graphics2D g = image.createGraphics();
        g.setColor(shot.palette().of(Tint.PAPER));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        double scale = shot.outputScale() * Magnification.PIXELS_PER_POINT;
        g.scale(scale, scale);
        paint(g, shot, Magnification.inPoints(shot.view()));
        g.dispose();
        return image;
    }

    /** What lies below the thin lines, those, what lies above them with the words. */
    void paint(Graphics2D g, Shot shot, PlanView points) {
        List<Item> below = new ArrayList<>();
        List<Item> thin = new ArrayList<>();
        List<Item> above = new ArrayList<>();
        for (Item item : seen(shot.view())) {
            if (!shot.layers().contains(item.layer())) {
                continue;
            }
            boolean isAbove = item.layer().compareTo(Layer.ALLOWED_COPPER) > 0;
            List<Item> lines = ThinLines.isThin(item) ? thin : below;
            (isAbove ? above : lines).add(item);
        }
        PlanPainter painter = new PlanPainter(g, shot.palette());
        painter.paint(plan(below, points, List.of()), shot.layers(), Lettering.SIZE);
        ThinLines.paint(g, thin, points, shot.palette());
        painter.paint(plan(above, points, shot.words().notes()), shot.layers(), Lettering.SIZE);
        g.setColor(shot.palette().of(Tint.GROUNDING_ELECTRODE_CONDUCTOR));
        g.setStroke(CALL_OUT);
        shot.words().crowds().all().forEach(crowd -> g.draw(crowd.in(points)));
    }

    private PlacedPlan plan(List<Item> items, PlanView points, List<PlacedNote> notes) {
        return new PlacedPlan(new Picture(index.picture().level(), items, List.of()), points, notes, 1, List.of());
    }

    /** What may show in a view, in the order of painting. */
    List<Item> seen(PlanView view) {
        PlanPoint southWest = view.placeAt(
                new Point2D.Double(view.frame().getMinX() - REACH, view.frame().getMaxY() + REACH));
        PlanPoint northEast = view.placeAt(
                new Point2D.Double(view.frame().getMaxX() + REACH, view.frame().getMinY() - REACH));
        return index.near(new Bounds(southWest.x(), southWest.y(), northEast.x(), northEast.y()));
    }

    private static BufferedImage over(int[] pixels, int width, int height) {
        WritableRaster raster =
                Raster.createPackedRaster(new DataBufferInt(pixels, pixels.length), width, height, width, MASKS, null);
        ColorModel model = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB_PRE).getColorModel();
        return new BufferedImage(model, raster, true, null);
    }
}
