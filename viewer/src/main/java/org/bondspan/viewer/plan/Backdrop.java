package org.bondspan.viewer.plan;

import java.awt.geom.Point2D;
import java.nio.IntBuffer;
import javafx.application.Platform;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.bondspan.sheet.plan.PlanView;
import org.jspecify.annotations.Nullable;

/**
 * The painted plan. Painting is done on a thread of its own; meanwhile the last painting is moved and stretched to
 * where it belongs, so that the plan follows the hand at once. All methods on the JavaFX thread.
 */
final class Backdrop extends ImageView {
    private final Latest painter = new Latest("plan painter");
    private final Runnable onPainted;
    private @Nullable Surface front;
    private @Nullable Surface back;
    private @Nullable Shot painted;
    private @Nullable Shot wanted;
    private @Nullable PlanRaster raster;
    private boolean painting;

    /** {@code onPainted} is called after each painting that is the one wanted last. */
    Backdrop(Runnable onPainted) {
        this.onPainted = onPainted;
        setMouseTransparent(true);
        setSmooth(false);
        setId("backdrop");
    }

    /** Shows a shot as soon as it is painted. */
    void show(Shot shot, PlanRaster of) {
        if (shot.equals(wanted) && of == raster) {
            return;
        }
        wanted = shot;
        raster = of;
        place(shot.view());
        if (!painting) {
            paint(shot, of);
        }
    }

    /** Whether the last shot that was asked for is on the screen. */
    boolean isSettled() {
        return !painting && painted != null;
    }

    private void paint(Shot shot, PlanRaster of) {
        painting = true;
        Surface surface = back != null && back.fits(shot) ? back : new Surface(shot);
        painter.execute(() -> {
            try {
                of.paint(shot, surface.pixels);
                Platform.runLater(() -> painted(shot, of, surface));
            } catch (RuntimeException | Error e) {
                Platform.runLater(() -> failed(e));
            }
        });
    }

    /** The fault goes where faults of the JavaFX thread go; the next shot is tried again. */
    private void failed(Throwable e) {
        painting = false;
        throw new IllegalStateException("the plan could not be painted", e);
    }

    private void painted(Shot shot, PlanRaster of, Surface surface) {
        painting = false;
        back = front;
        front = surface;
        surface.buffer.updateBuffer(all -> null);
        painted = shot;
        setImage(surface.image);
        Shot next = wanted == null ? shot : wanted;
        PlanRaster nextOf = raster == null ? of : raster;
        place(next.view());
        if (!next.equals(shot) || nextOf != of) {
            paint(next, nextOf);
        } else {
            onPainted.run();
        }
    }

    /** Puts the painting where it belongs in another view. */
    private void place(PlanView view) {
        if (painted == null) {
            return;
        }
        double grown = view.pointsPerNanometre() / painted.view().pointsPerNanometre();
        Point2D corner = view.of(painted.view().placeAt(new Point2D.Double(0, 0)));
        boolean same = view.equals(painted.view());
        setX(same ? 0 : corner.getX());
        setY(same ? 0 : corner.getY());
        setFitWidth(painted.pixelWidth() / painted.outputScale() * grown);
        setFitHeight(painted.pixelHeight() / painted.outputScale() * grown);
    }

    /** Pixels that Java2D paints and JavaFX shows. */
    private static final class Surface {
        final int[] pixels;
        final PixelBuffer<IntBuffer> buffer;
        final WritableImage image;

        Surface(Shot shot) {
            this.pixels = new int[shot.pixelWidth() * shot.pixelHeight()];
            this.buffer = new PixelBuffer<>(
                    shot.pixelWidth(), shot.pixelHeight(), IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance());
            this.image = new WritableImage(buffer);
        }

        boolean fits(Shot shot) {
            return buffer.getWidth() == shot.pixelWidth() && buffer.getHeight() == shot.pixelHeight();
        }
    }
}
