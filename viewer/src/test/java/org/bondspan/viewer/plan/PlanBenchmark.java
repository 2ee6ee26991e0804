package org.bondspan.viewer.plan;

import java.io.File;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import javax.imageio.ImageIO;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;

/** Times the painting of a large plan while it is panned, with all in view and zoomed in, without a window. */
final class PlanBenchmark {
    private static final int SEGMENTS = 50_000;
    private static final double WIDTH = 1200;
    private static final double HEIGHT = 760;
    private static final int FRAMES = 120;

    private PlanBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        Picture picture = LargePlan.of(SEGMENTS, 7);
        long start = System.nanoTime();
        SegmentIndex index = new SegmentIndex(picture);
        System.out.printf(Locale.ROOT, "index          %6.1f ms%n", (System.nanoTime() - start) / 1e6);
        PlanRaster raster = new PlanRaster(index);
        Camera whole = Camera.around(picture.bounds());
        report("all in view", picture, raster, share -> whole.moved((share - 0.5) * 0.02 * whole.width(), 0));
        Camera near = whole.zoomed(8);
        report("zoomed in 8x", picture, raster, share -> near.moved((share - 0.5) * 4 * near.width(), 0));
        if (arguments.length > 0) {
            write(picture, raster, whole, new File(arguments[0], "all.png"));
            write(picture, raster, near, new File(arguments[0], "near.png"));
        }
    }

    private static void report(String what, Picture picture, PlanRaster raster, DoubleFunction<Camera> path) {
        PlanView rest = path.apply(0.5).view(WIDTH, HEIGHT);
        Lettering words = Lettering.none(rest);
        for (int round = 0; round < 3; round++) {
            long start = System.nanoTime();
            words = Lettering.place(raster, picture, rest, Drawn.ALL, Labels.SHOWN, List.of());
            System.out.printf(
                    Locale.ROOT,
                    "%-14s %6.1f ms placing %d words%n",
                    what,
                    (System.nanoTime() - start) / 1e6,
                    words.notes().size());
        }
        int[] pixels = new int[(int) (WIDTH * HEIGHT)];
        for (int round = 0; round < 3; round++) {
            double[] times = new double[FRAMES];
            for (int i = 0; i < FRAMES; i++) {
                PlanView view = path.apply(i / (FRAMES - 1.0)).view(WIDTH, HEIGHT);
                long start = System.nanoTime();
                raster.paint(new Shot(view, 1, Palette.LIGHT, Drawn.ALL, words.moved(view)), pixels);
                times[i] = (System.nanoTime() - start) / 1e6;
            }
            Arrays.sort(times);
            System.out.printf(
                    Locale.ROOT,
                    "%-14s %6.1f / %6.1f / %6.1f ms a redraw (least, median, 95 %%), %4.0f a second%n",
                    what,
                    times[0],
                    times[FRAMES / 2],
                    times[FRAMES * 95 / 100],
                    1000 / times[FRAMES / 2]);
        }
    }

    private static void write(Picture picture, PlanRaster raster, Camera camera, File file) throws IOException {
        PlanView view = camera.view(WIDTH, HEIGHT);
        Lettering words = Lettering.place(raster, picture, view, Drawn.ALL, Labels.SHOWN, List.of());
        ImageIO.write(raster.image(new Shot(view, 1, Palette.LIGHT, Drawn.ALL, words)), "png", file);
    }
}
