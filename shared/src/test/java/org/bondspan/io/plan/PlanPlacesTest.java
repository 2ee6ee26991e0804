package org.bondspan.io.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.bondspan.site.PlanPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The published rule: within 0.05 ft, in x and in y, of a place earlier in the file is that place. */
class PlanPlacesTest {
    /** 0.05 ft at 304,800,000 nm a foot. */
    private static final long TOLERANCE = 15_240_000L;

    private final PlanPlaces places = new PlanPlaces();

    @Test
    void placeWithinTheToleranceIsTheEarlierOneEdgesIncluded() {
        PlanPoint first = places.snap(new PlanPoint(0, 0));
        assertThat(places.snap(new PlanPoint(TOLERANCE, -TOLERANCE))).isEqualTo(first);
        assertThat(places.snap(new PlanPoint(-TOLERANCE, 1))).isEqualTo(first);
    }

    @Test
    void placeBeyondTheToleranceInOneDirectionIsItself() {
        places.snap(new PlanPoint(0, 0));
        PlanPoint east = new PlanPoint(TOLERANCE + 1, 0);
        PlanPoint south = new PlanPoint(0, -TOLERANCE - 1);
        assertThat(places.snap(east)).isEqualTo(east);
        assertThat(places.snap(south)).isEqualTo(south);
    }

    @Test
    void earliestPlaceWinsThoughAnotherIsNearer() {
        PlanPoint first = places.snap(new PlanPoint(0, 0));
        PlanPoint second = places.snap(new PlanPoint(TOLERANCE + 1, 0));
        assertThat(places.snap(new PlanPoint(TOLERANCE, 0))).isEqualTo(first);
        assertThat(places.snap(new PlanPoint(TOLERANCE + 2, 0))).isEqualTo(second);
    }

    @Test
    void rowOfNearPlacesDoesNotCreep() {
        PlanPoint first = places.snap(new PlanPoint(0, 0));
        assertThat(places.snap(new PlanPoint(TOLERANCE, 0))).isEqualTo(first);
        PlanPoint third = new PlanPoint(2 * TOLERANCE, 0);
        assertThat(places.snap(third)).isEqualTo(third);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("org.bondspan.Seeds#seeds")
    void agreesWithLookingThroughAllEarlierPlaces(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<PlanPoint> kept = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            PlanPoint point =
                    new PlanPoint(random.nextLong(-5, 6) * TOLERANCE / 2, random.nextLong(-99_000_000, 99_000_000));
            PlanPoint expected = kept.stream()
                    .filter(place -> Math.abs(place.x() - point.x()) <= TOLERANCE
                            && Math.abs(place.y() - point.y()) <= TOLERANCE)
                    .findFirst()
                    .orElse(point);
            assertThat(places.snap(point)).isEqualTo(expected);
            if (expected.equals(point)) {
                kept.add(point);
            }
        }
    }
}
