package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
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
