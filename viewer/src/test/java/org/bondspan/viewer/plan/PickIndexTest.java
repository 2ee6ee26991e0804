package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Pen;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PickIndexTest {
    private static final double REACH = 7;

    private final Picture hall = Drawn.hall();
    private final PickIndex index = new PickIndex(hall);
    private final PlanView view = Camera.around(hall.bounds()).view(800, 500);

    private static LongStream seeds() {
        return Seeds.seeds();
    }

    private Optional<String> pick(PlanPoint place, double right, double down, Set<Layer> layers) {
        Point2D at = view.of(place);
        return index.find(new Point2D.Double(at.getX() + right, at.getY() + down), view, layers, REACH);
    }

    @Test
    void aSymbolUnderThePointerComesFirst() {
        assertThat(pick(Drawn.at(38, 2), 6, 0, Drawn.ALL)).contains("rod");
        assertThat(pick(Drawn.at(2, 2), 0, -5, Drawn.ALL)).contains("service");
    }

    @Test
    void aConductorComesBeforeTheWayThatItTakes() {
        assertThat(pick(Drawn.at(20, 2), 0, 5, Drawn.ALL)).contains("C1");
    }

    @Test
    void whatIsSwitchedOffIsNotPicked() {
        Set<Layer> layers = EnumSet.complementOf(EnumSet.of(Layer.CONDUCTORS));
        assertThat(pick(Drawn.at(20, 2), 0, 5, layers)).contains("wall-tray");
    }

    @Test
    void anAreaIsPickedInItsInside() {
        assertThat(pick(Drawn.at(12, 10), 0, 0, Drawn.ALL)).contains("shaft");
        assertThat(pick(Drawn.at(16, 10), 0, 0, Drawn.ALL)).isEmpty();
    }

    @Test
    void nothingIsPickedBeyondReach() {
        assertThat(pick(Drawn.at(20, 2), 0, REACH + 1, Drawn.ALL)).isEmpty();
        assertThat(pick(Drawn.at(20, 2), 0, REACH - 1, Drawn.ALL)).contains("C1");
    }

    @Test
    void aLinePaintedBesideItsPlaceIsPickedAndMarkedWhereItIsPainted() {
        List<PlanPoint> east = List.of(Drawn.at(2, 2), Drawn.at(38, 2));
        Pen pen = LineKind.BONDING_JUMPER.pen();
        Item.Run inPlace = new Item.Run("C1", Layer.CONDUCTORS, LineKind.BONDING_JUMPER, pen, east);
        // 18 points, 24 pixels, to the left of a line that runs east: above it on the screen
        Item.Run aside = new Item.Run("C2", Layer.CONDUCTORS, LineKind.BONDING_JUMPER, pen, east, List.of(18f));
        PickIndex both = new PickIndex(new Picture("L1", List.of(inPlace, aside), List.of()));
        Point2D on = view.of(Drawn.at(20, 2));
        Point2D above = new Point2D.Double(on.getX(), on.getY() - 24);

        assertThat(both.find(on, view, Drawn.ALL, REACH)).contains("C1");
        assertThat(both.find(above, view, Drawn.ALL, REACH)).contains("C2");
        assertThat(Outline.of(List.of(aside), view, Drawn.ALL).lines()).anyMatch(line -> line.ptSegDist(above) < 1e-6);
    }

    /** Against the distance to each single line, reckoned by java.awt.geom. */
    @ParameterizedTest
    @MethodSource("seeds")
    void findsTheNearestOfManyLines(long seed) {
        Random random = new Random(seed);
        Drawn plan = new Drawn();
        for (int i = 0; i < 300; i++) {
            double x = random.nextDouble() * 100;
            double y = random.nextDouble() * 60;
            plan.run(
                    "C" + i,
                    Layer.CONDUCTORS,
                    LineKind.BONDING_JUMPER,
                    x,
                    y,
                    x + 10 * random.nextGaussian(),
                    random.nextBoolean() ? y : y + 10 * random.nextGaussian());
        }
        Picture picture = plan.picture();
        PickIndex many = new PickIndex(picture);
        PlanView seen = Camera.around(picture.bounds())
                .zoomed(1 + 5 * random.nextDouble())
                .view(800, 500);
        for (int i = 0; i < 50; i++) {
            Point2D at = new Point2D.Double(random.nextDouble() * 800, random.nextDouble() * 500);
            double nearest = picture.items().stream()
                    .mapToDouble(item -> distance(item, seen, at))
                    .min()
                    .orElseThrow();
            Optional<String> found = many.find(at, seen, Drawn.ALL, REACH);
            assertThat(found.isPresent()).isEqualTo(nearest <= REACH);
            found.ifPresent(id -> assertThat(picture.items().stream()
                            .filter(item -> item.id().equals(id))
                            .mapToDouble(item -> distance(item, seen, at)))
                    .containsExactly(nearest));
        }
    }

    private static double distance(Item item, PlanView view, Point2D at) {
        return new Line2D.Double(
                        view.of(item.places().get(0)), view.of(item.places().get(1)))
                .ptSegDist(at);
    }
}
