package org.bondspan.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.bondspan.layout.Role;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.WireSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Distances on paper follow from the widths of the pens: half of each and the gap of 2 points between their edges. */
class SideBySideTest {
    private static final PlanView VIEW = new PlanView(new Rectangle2D.Double(0, 0, 1000, 1000), 1, 500, 500);

    /** Letters of 8 points: symbols and lines have their stated sizes. */
    private static final double AS_STATED = 1;

    private static Item.Run conductor(String id, WireSize size, long... places) {
        Role role = Role.BONDING_JUMPER;
        return new Item.Run(id, Layer.CONDUCTORS, LineKind.of(role), LineKind.pen(role, size), points(places));
    }

    private static Item.Run line(LineKind kind, Layer layer, long... places) {
        return new Item.Run(kind.name(), layer, kind, kind.pen(), points(places));
    }

    private static List<PlanPoint> points(long... places) {
        return IntStream.range(0, places.length / 2)
                .mapToObj(i -> new PlanPoint(places[2 * i], places[2 * i + 1]))
                .toList();
    }

    private static List<Point2D> painted(List<Item> items, int index) {
        return BesidePath.of((Item.Run) SideBySide.of(items).get(index), VIEW, AS_STATED);
    }

    /** A room of 600 by 400, drawn so that it turns left. */
    private static Item.Run room() {
        return line(LineKind.WALL, Layer.BUILDING, 100, 100, 700, 100, 700, 500, 100, 500, 100, 100);
    }

    @Test
    void aConductorOnAWallIsPaintedInsideAndEndsAtItsTruePlaces() {
        // 6 AWG: 1.5 points wide, the wall 1.8: 0.75 + 0.9 + 2 = 3.65 inside. Paper counts downwards.
        List<Point2D> path = painted(List.of(room(), conductor("C", WireSize.AWG_6, 600, 100, 200, 100)), 1);

        assertThat(path).hasSize(4);
        assertThat(path.get(0)).isEqualTo(VIEW.of(new PlanPoint(600, 100)));
        assertThat(path.get(1).getY()).isCloseTo(900 - 3.65, within(1e-4));
        assertThat(path.get(2).getY()).isCloseTo(900 - 3.65, within(1e-4));
        assertThat(path.get(3)).isEqualTo(VIEW.of(new PlanPoint(200, 100)));
    }

    @Test
    void roundACornerOfTheRoomTheTwoStretchesMeet() {
        List<Point2D> path = painted(List.of(room(), conductor("C", WireSize.AWG_6, 400, 100, 700, 100, 700, 300)), 1);

        assertThat(path.get(2).getX()).isCloseTo(700 - 3.65, within(1e-4));
        assertThat(path.get(2).getY()).isCloseTo(900 - 3.65, within(1e-4));
    }

    @Test
    void rebarBelowAWallIsPaintedOutside() {
        // Letters stand 3.7 to either side: 0.9 + 3.7 + 2.
        List<Point2D> path =
                painted(List.of(room(), line(LineKind.FOOTING_REBAR, Layer.NOT_PERMITTED, 100, 100, 700, 100)), 1);

        assertThat(path).allSatisfy(at -> assertThat(at.getY()).isCloseTo(900 + 6.6, within(1e-4)));
    }

    @Test
    void aConductorAloneOnABeamStaysInItsPlace() {
        Item.Run conductor = conductor("C", WireSize.AWG_6, 200, 200, 500, 200);

        assertThat(SideBySide.of(List.of(line(LineKind.BEAM, Layer.FRAME, 0, 200, 900, 200), conductor)))
                .endsWith(conductor);
    }

    @Test
    void conductorsThatOnlyTouchOrCrossStayInTheirPlaces() {
        List<Item> items = List.of(
                conductor("A", WireSize.AWG_6, 100, 200, 300, 200),
                conductor("B", WireSize.AWG_6, 300, 200, 500, 200),
                conductor("D", WireSize.AWG_6, 200, 100, 200, 300));

        assertThat(SideBySide.of(items)).isEqualTo(items);
    }

    @Test
    void anObliqueLineIsFoundToo() {
        List<Point2D> path = painted(
                List.of(
                        conductor("A", WireSize.AWG_6, 100, 100, 400, 500),
                        conductor("B", WireSize.AWG_6, 700, 900, 250, 300)),
                1);

        // Two lines of 1.5 with a gap of 2 between them.
        Line2D drawn = new Line2D.Double(VIEW.of(new PlanPoint(100, 100)), VIEW.of(new PlanPoint(400, 500)));
        assertThat(drawn.ptLineDist(path.get(1))).isCloseTo(3.5, within(1e-4));
    }

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 100) : LongStream.of(only);
    }

    /** Up to six conductors on one line, of any size and extent: their edges are at least a point apart. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noTwoConductorsCoverEachOther(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < 2 + random.nextInt(5); i++) {
            long from = random.nextLong(100, 600);
            long to = from + random.nextLong(100, 300);
            boolean back = random.nextBoolean();
            WireSize size = random.nextBoolean() ? WireSize.AWG_6 : WireSize.AWG_3_0;
            items.add(conductor("C" + i, size, back ? to : from, 300, back ? from : to, 300));
        }
        List<Item> set = SideBySide.of(items);
        for (int i = 0; i < set.size(); i++) {
            for (int j = 0; j < i; j++) {
                Item.Run a = (Item.Run) set.get(i);
                Item.Run b = (Item.Run) set.get(j);
                double apart = Math.abs(middle(a).getY() - middle(b).getY());
                double edges = (a.pen().width() + b.pen().width()) / 2;
                assertThat(apart >= edges + 1 || !shareAStretch(a, b)).isTrue();
            }
        }
    }

    private static Point2D middle(Item.Run run) {
        List<Point2D> path = BesidePath.of(run, VIEW, AS_STATED);
        return path.get(path.size() / 2);
    }

    private static boolean shareAStretch(Item.Run a, Item.Run b) {
        Bounds one = Bounds.around(a.places());
        Bounds other = Bounds.around(b.places());
        return one.west() < other.east() && other.west() < one.east();
    }
}
