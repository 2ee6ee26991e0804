package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.util.Random;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CameraTest {
    private static final Bounds HALL = new Bounds(0, 0, 40 * Drawn.METRE, 20 * Drawn.METRE);

    private static java.util.stream.LongStream seeds() {
        return Seeds.seeds();
    }

    private static PlanPoint somewhere(Random random) {
        return Drawn.at(random.nextDouble() * 40, random.nextDouble() * 20);
    }

    private static Camera some(Random random) {
        return Camera.around(HALL).zoomed(Math.exp(4 * random.nextDouble() - 2), somewhere(random));
    }

    @Test
    void showsAllOfAPlanInAPaneOfAnyShape() {
        Camera camera = Camera.around(HALL);
        for (double[] size : new double[][] {{800, 500}, {300, 900}, {2000, 100}}) {
            PlanView view = camera.view(size[0], size[1]);
            assertThat(view.frame().contains(view.of(Drawn.at(0, 0)))).isTrue();
            assertThat(view.frame().contains(view.of(Drawn.at(40, 20)))).isTrue();
        }
    }

    @Test
    void northIsUpAndTheMiddleIsInTheMiddle() {
        PlanView view = Camera.around(HALL).view(800, 500);
        assertThat(view.of(Drawn.at(20, 10))).isEqualTo(new Point2D.Double(400, 250));
        assertThat(view.of(Drawn.at(20, 15)).getY()).isLessThan(250);
        assertThat(view.of(Drawn.at(25, 10)).getX()).isGreaterThan(400);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void zoomingKeepsThePlaceUnderThePointer(long seed) {
        Random random = new Random(seed);
        Camera camera = some(random);
        PlanPoint fixed = somewhere(random);
        double factor = Math.exp(2 * random.nextDouble() - 1);
        PlanView before = camera.view(800, 500);
        PlanView after = camera.zoomed(factor, fixed).view(800, 500);
        assertThat(after.of(fixed).distance(before.of(fixed))).isCloseTo(0, within(1e-6));
        assertThat(after.pointsPerNanometre() / before.pointsPerNanometre()).isCloseTo(factor, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPixelAndItsPlanPlaceAreTheSame(long seed) {
        Random random = new Random(seed);
        PlanView view = some(random).view(1200, 760);
        Point2D pixel = new Point2D.Double(random.nextDouble() * 1200, random.nextDouble() * 760);
        // a nanometre is far less than a thousandth of a pixel here
        assertThat(view.of(view.placeAt(pixel)).distance(pixel)).isCloseTo(0, within(1e-3));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void bringsIntoViewWhatIsAsked(long seed) {
        Random random = new Random(seed);
        Camera camera = some(random);
        PlanPoint a = somewhere(random);
        PlanPoint b = somewhere(random);
        Bounds wanted = Bounds.around(java.util.List.of(a, b));
        PlanView view = camera.revealing(wanted).view(640, 480);
        assertThat(view.frame().contains(view.of(a))).isTrue();
        assertThat(view.frame().contains(view.of(b))).isTrue();
        assertThat(camera.revealing(wanted).width()).isGreaterThanOrEqualTo(camera.width() * (1 - 1e-12));
    }

    @Test
    void staysWhereItIsForWhatIsInViewAlready() {
        Camera camera = Camera.around(HALL);
        assertThat(camera.revealing(new Bounds(Drawn.METRE, Drawn.METRE, 2 * Drawn.METRE, 2 * Drawn.METRE)))
                .isEqualTo(camera);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverLosesThePlanOutOfSight(long seed) {
        Random random = new Random(seed);
        Camera lost = Camera.around(HALL)
                .zoomed(Math.exp(60 * random.nextDouble() - 30))
                .moved(1e12 * random.nextGaussian(), 1e12 * random.nextGaussian());
        Camera held = lost.within(HALL);
        assertThat(held.centreX()).isBetween(0.0, 40.0 * Drawn.METRE);
        assertThat(held.centreY()).isBetween(0.0, 20.0 * Drawn.METRE);
        double scale = held.view(800, 500).pointsPerNanometre();
        double fitted = Camera.around(HALL).view(800, 500).pointsPerNanometre();
        assertThat(scale).isBetween(fitted / 8.1, 800 / 0.05e9);
        assertThat(held.within(HALL)).isEqualTo(held);
    }

    @Test
    void aPlaceOfNoExtentCanBeLookedAt() {
        Camera camera = Camera.around(new Bounds(5, 5, 5, 5));
        assertThat(camera.view(100, 100).of(new PlanPoint(5, 5))).isEqualTo(new Point2D.Double(50, 50));
    }

    @Test
    void refusesToSeeNothing() {
        assertThatThrownBy(() -> new Camera(0, 0, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Camera(Double.NaN, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
