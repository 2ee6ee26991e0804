package org.bondspan.viewer.plan;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.bondspan.sheet.plan.PlanView;

/** Paints of a scene what a pane shows, with its scale bar, on anything that takes ink. */
public final class SceneOnPaper {
    private SceneOnPaper() {}

    /** Into a frame in points, which is as wide as a pane of 4/3 times as many pixels. */
    public static void paint(Graphics2D g, PlanScene scene, Rectangle2D frame) {
        double pixels = Magnification.PIXELS_PER_POINT;
        PlanView view = scene.camera().view(frame.getWidth() * pixels, frame.getHeight() * pixels);
        PlanRaster raster = new PlanRaster(new SegmentIndex(scene.picture()));
        Lettering words = Lettering.place(raster, scene.picture(), view, scene.layers(), scene.labels(), List.of());
        Graphics2D inFrame = (Graphics2D) g.create();
        inFrame.clip(frame);
        inFrame.translate(frame.getX(), frame.getY());
        raster.paint(inFrame, new Shot(view, 1, scene.palette(), scene.layers(), words), words.view());
        ScaleBar.of(view, scene.unit()).paint(inFrame, frame.getHeight(), scene.palette());
        inFrame.dispose();
    }
}
