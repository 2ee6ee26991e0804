package org.bondspan.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.bondspan.network.PolygonBand.Interval;
import org.bondspan.site.PlanPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against places tried one by one in the geometry library, on random polygons. */
class PolygonBandTest {

    static LongStream seeds() {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(0, 150) : LongStream.of(only);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithPlacesTriedOnOrthogonalPolygons(long seed) {
        compare(RandomPolygons.orthogonal(new Random(seed)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void agreesWithPlacesTriedOnObliquePolygons(long seed) {
        compare(RandomPolygons.oblique(new Random(seed)));
    }

    /** Every stretch of one unit on every line, one line beyond the polygon included. */
    private static void compare(List<PlanPoint> outline) {
        PolygonBand rows = band(outline);
        for (int y = -1; y <= RandomPolygons.SPAN + 1; y++) {
            List<Interval> closed = rows.closed(y);
            List<Interval> inside = rows.inside(y);
            for (int x = -1; x <= RandomPolygons.SPAN; x++) {
                SampledStretch stretch = new SampledStretch(new PlanPoint(x, y), new PlanPoint(x + 1, y));
                assertThat(covers(closed, x))
                        .as("from %d, %d in %s", x, y, outline)
                        .isEqualTo(stretch.liesInClosed(outline));
                assertThat(touches(inside, x))
                        .as("from %d, %d inside %s", x, y, outline)
                        .isEqualTo(stretch.touchesInside(outline));
            }
        }
    }

    private static boolean covers(List<Interval> intervals, int x) {
        return intervals.stream().anyMatch(interval -> interval.from() <= x && x + 1 <= interval.to());
    }

    private static boolean touches(List<Interval> intervals, int x) {
        return intervals.stream().anyMatch(interval -> interval.from() < x + 1 && x < interval.to());
    }

    private static PolygonBand band(List<PlanPoint> outline) {
        return new PolygonBand(
                outline.stream().mapToLong(PlanPoint::x).toArray(),
                outline.stream().mapToLong(PlanPoint::y).toArray());
    }

    @Test
    void knowsHowFarItReaches() {
        PolygonBand band = new PolygonBand(new long[] {0, 4, 4, 0}, new long[] {-3, -3, 7, 7});
        assertThat(band.lowest()).isEqualTo(-3);
        assertThat(band.highest()).isEqualTo(7);
    }

    /** A triangle of legs 3 and 10: at height 1 its slope stands at 0.3. */
    @Test
    void roundsInwardWhatIsInTheClosedPolygonAndOutwardWhatItsInsideTouches() {
        PolygonBand band = new PolygonBand(new long[] {0, 10, 10}, new long[] {0, 0, 33});
        assertThat(band.closed(1)).contains(new Interval(1, 10));
        assertThat(band.inside(1)).containsExactly(new Interval(0, 10));
        assertThat(band.closed(0)).contains(new Interval(0, 10));
        assertThat(band.inside(0)).as("an edge is not inside").isEmpty();
    }

    /** 100,000 km in nanometres, the largest magnitude of a site file: products of two leave 64 bits. */
    @Test
    void isExactForTheLargestCoordinates() {
        long most = 100_000_000_000_000_000L;
        PolygonBand band = new PolygonBand(new long[] {-most, most, most}, new long[] {-most, -most, most});
        long at = 12_345_678_901_234_567L;
        assertThat(band.closed(at)).contains(new Interval(at, most));
        assertThat(band.inside(at)).containsExactly(new Interval(at, most));
    }
}
