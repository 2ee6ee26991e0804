package org.bondspan.io.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.bondspan.io.plan.OutlineCheck.Clash;
import org.bondspan.site.PlanPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OutlineCheckTest {
    @Test
    void acceptsConvexAndReentrantOutlinesInEitherDirection() {
        assertSimple(0, 0, 4, 0, 4, 3);
        assertSimple(0, 0, 0, 3, 4, 3, 4, 0);
        assertSimple(0, 0, 6, 0, 6, 6, 4, 6, 4, 2, 2, 2, 2, 6, 0, 6);
    }

    @Test
    void acceptsVerticesWithinStraightEdges() {
        assertSimple(0, 0, 2, 0, 4, 0, 4, 1, 4, 3, 0, 3, 0, 1);
    }

    @Test
    void findsCrossedEdges() {
        assertThat(check(0, 0, 4, 4, 4, 0, 0, 4)).contains(new Clash(0, 2));
    }

    @Test
    void findsVertexOnAnotherEdge() {
        assertThat(check(0, 0, 6, 0, 6, 4, 3, 0, 0, 4)).isPresent();
    }

    @Test
    void findsPlaceVisitedTwice() {
        assertThat(check(0, 0, 2, 2, 4, 0, 4, 4, 2, 2, 0, 4)).isPresent();
    }

    @Test
    void findsEdgeThatRunsBackOnItself() {
        assertThat(check(0, 0, 4, 0, 4, 4, 4, 2)).isPresent();
        assertThat(check(0, 0, 8, 0, 4, 0)).isPresent();
    }

    @Test
    void isExactAtTheLargestMagnitudes() {
        long far = 100_000_000_000_000_000L;
        assertThat(check(-far, -far, far, far, far - 1, far, -far, far)).isEmpty();
        assertThat(check(-far, -far, far, far, 0, 0, -far, far)).isPresent();
        assertThat(check(-far, -far, far, far, 0, 1, -far, far)).isEmpty();
    }

    /** Against the JDK's segment test, which is exact on coordinates this small, over all pairs of edges. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("org.bondspan.Seeds#seeds")
    void agreesWithTestingAllPairsOfEdges(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 50; round++) {
            List<PlanPoint> outline = randomOutline(random, 3 + random.nextInt(6), 3 + random.nextInt(6));
            assertThat(OutlineCheck.find(outline).isEmpty())
                    .as("%s is simple", outline)
                    .isEqualTo(isSimple(outline));
        }
    }

    private static List<PlanPoint> randomOutline(SplittableRandom random, int size, int extent) {
        List<PlanPoint> outline = new ArrayList<>();
        while (outline.size() < size) {
            PlanPoint next = new PlanPoint(random.nextInt(extent), random.nextInt(extent));
            boolean repeats =
                    !outline.isEmpty() && outline.get(outline.size() - 1).equals(next);
            boolean closes = outline.size() == size - 1 && outline.get(0).equals(next);
            if (!repeats && !closes) {
                outline.add(next);
            }
        }
        return outline;
    }

    private static boolean isSimple(List<PlanPoint> outline) {
        int n = outline.size();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                PlanPoint a = outline.get(i);
                PlanPoint b = outline.get((i + 1) % n);
                PlanPoint c = outline.get(j);
                PlanPoint d = outline.get((j + 1) % n);
                boolean clash;
                if (b.equals(c) && j == i + 1) {
                    clash = contains(a, b, d) || contains(c, d, a);
                } else if (d.equals(a) && i == 0 && j == n - 1) {
                    clash = contains(a, b, c) || contains(c, d, b);
                } else {
                    clash = line(a, b).intersectsLine(line(c, d));
                }
                if (clash) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean contains(PlanPoint from, PlanPoint to, PlanPoint place) {
        return line(from, to).relativeCCW((double) place.x(), (double) place.y()) == 0;
    }

    private static Line2D line(PlanPoint from, PlanPoint to) {
        return new Line2D.Double((double) from.x(), (double) from.y(), (double) to.x(), (double) to.y());
    }

    private static void assertSimple(long... coordinates) {
        assertThat(check(coordinates)).isEmpty();
    }

    private static Optional<Clash> check(long... coordinates) {
        return OutlineCheck.find(IntStream.range(0, coordinates.length / 2)
                .mapToObj(i -> new PlanPoint(coordinates[2 * i], coordinates[2 * i + 1]))
                .toList());
    }
}
