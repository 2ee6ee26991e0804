package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlacedPlan;
import org.bondspan.sheet.plan.PlanPainter;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanRasterTest {
    /** In pixels, of the large plan looked at from three times as near as whole. */
    private static final long SHORTEST_LINE = 10;

    private final Picture hall = Drawn.hall();
    private final PlanRaster raster = new PlanRaster(new SegmentIndex(hall));
    private final PlanView view = Camera.around(hall.bounds()).view(800, 500);

    private static LongStream seeds() {
        return Seeds.seeds().limit(20);
    }

    private static Shot shot(PlanView view, double outputScale, Set<Layer> layers) {
        return new Shot(view, outputScale, Palette.LIGHT, layers, Lettering.none(view));
    }

    private Color colour(BufferedImage image, PlanPoint place, double scale) {
        Point2D at = view.of(place);
        return new Color(image.getRGB((int) (at.getX() * scale), (int) (at.getY() * scale)));
    }

    @Test
    void paintsEachThingInItsPlaceAndColour() {
        BufferedImage image = raster.image(shot(view, 1, Drawn.ALL));
        assertThat(colour(image, Drawn.at(20, 2), 1)).isEqualTo(Palette.LIGHT.of(Tint.GROUNDING_ELECTRODE_CONDUCTOR));
        assertThat(colour(image, Drawn.at(25, 15), 1)).isEqualTo(Palette.LIGHT.of(Tint.PAPER));
        assertThat(colour(image, Drawn.at(20, 20), 1)).isEqualTo(Palette.LIGHT.of(Tint.INK));
    }

    @Test
    void layersThatAreOffAreNotPainted() {
        Set<Layer> layers = EnumSet.complementOf(EnumSet.of(Layer.CONDUCTORS, Layer.ALLOWED_COPPER));
        BufferedImage image = raster.image(shot(view, 1, layers));
        assertThat(colour(image, Drawn.at(20, 2), 1)).isEqualTo(Palette.LIGHT.of(Tint.PAPER));
    }

    @Test
    void aFinerScreenGetsMorePixelsOfTheSameView() {
        BufferedImage image = raster.image(shot(view, 1.5, Drawn.ALL));
        assertThat(image.getWidth()).isEqualTo(1200);
        assertThat(image.getHeight()).isEqualTo(750);
        assertThat(colour(image, Drawn.at(20, 2), 1.5)).isEqualTo(Palette.LIGHT.of(Tint.GROUNDING_ELECTRODE_CONDUCTOR));
    }

    /**
     * Against the drawing code of the sheets, given all items of the plan. Java2D rounds lines and paths apart: their
     * edges by up to 7 of 255 as measured, and now and then a whole line to the pixel beside, which leaves a few pixels
     * where it crosses others.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void paintsWhatTheSheetsWouldPaint(long seed) {
        Random random = new Random(seed);
        Picture picture = LargePlan.of(2_000, seed);
        PlanView seen = Camera.around(picture.bounds())
                .zoomed(3 + 10 * random.nextDouble())
                .moved(20.0 * Drawn.METRE * random.nextGaussian(), 10.0 * Drawn.METRE * random.nextGaussian())
                .view(600, 400);
        BufferedImage quick = new PlanRaster(new SegmentIndex(picture)).image(shot(seen, 1, Drawn.ALL));
        BufferedImage plain = paintedAsASheet(picture, seen);
        assertThat(pixelsWithoutLike(quick, plain)).isLessThan(SHORTEST_LINE / 2);
        assertThat(pixelsWithoutLike(plain, quick)).isLessThan(SHORTEST_LINE / 2);
    }

    private static BufferedImage paintedAsASheet(Picture picture, PlanView view) {
        BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_ARGB_PRE);
        Graphics2D g = image.createGraphics();
        g.setColor(Palette.LIGHT.of(Tint.PAPER));
        g.fillRect(0, 0, 600, 400);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.scale(Magnification.PIXELS_PER_POINT, Magnification.PIXELS_PER_POINT);
        PlacedPlan plan = new PlacedPlan(picture, Magnification.inPoints(view), List.of(), 1, List.of());
        new PlanPainter(g, Palette.LIGHT).paint(plan, Drawn.ALL, Lettering.SIZE);
        g.dispose();
        return image;
    }

    /** How many pixels of one image have no pixel of nearly the same colour there or just beside in the other. */
    private static long pixelsWithoutLike(BufferedImage one, BufferedImage other) {
        return IntStream.range(0, one.getWidth() * one.getHeight())
                .filter(i -> !hasLike(one, other, i % one.getWidth(), i / one.getWidth()))
                .count();
    }

    private static boolean hasLike(BufferedImage one, BufferedImage other, int x, int y) {
        for (int v = Math.max(0, y - 1); v <= Math.min(y + 1, one.getHeight() - 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(x + 1, one.getWidth() - 1); u++) {
                if (difference(new Color(one.getRGB(x, y)), new Color(other.getRGB(u, v))) <= 8) {
                    return true;
                }
            }
        }
        return false;
    }

    private static int difference(Color a, Color b) {
        int red = Math.abs(a.getRed() - b.getRed());
        int green = Math.abs(a.getGreen() - b.getGreen());
        return Math.max(red, Math.max(green, Math.abs(a.getBlue() - b.getBlue())));
    }

    @Test
    void paintsALineOfWhichBothEndsLieOutside() {
        Picture picture = new Drawn()
                .run("C1", Layer.CONDUCTORS, LineKind.GROUNDING_ELECTRODE_CONDUCTOR, -500, 3, 700, 3)
                .picture();
        PlanView near = Camera.around(hall.bounds()).view(800, 500);
        BufferedImage image = new PlanRaster(new SegmentIndex(picture)).image(shot(near, 1, Drawn.ALL));
        assertThat(colour(image, Drawn.at(20, 3), 1)).isEqualTo(Palette.LIGHT.of(Tint.GROUNDING_ELECTRODE_CONDUCTOR));
    }
}
