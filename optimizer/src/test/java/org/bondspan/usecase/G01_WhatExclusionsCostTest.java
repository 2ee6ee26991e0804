package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Copper;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.junit.jupiter.api.Test;

/** Sums by hand; geometry is chosen so that what the excluded metal would replace is a plain difference. */
class G01_WhatExclusionsCostTest {
    private static List<ExclusionCost> costs(String body) {
        return WhatExclusionsCost.of(SiteReader.parse(Sites.openFloor(100, 10, body), "test"), RouteLimits.none());
    }

    @Test
    void rebarFromTheServiceToTheRodsWouldReplaceTheRunBetween() {
        // Rod 1 beside the service, rod 2 at 100 ft: 110 ft of copper; over the bars it would be the 10 ft to rod 1.
        List<ExclusionCost> costs = costs("""
                "services": [{"id": "s", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "r1", $rod, $at(0, 10)}, {"id": "r2", $rod, $at(100, 0)}],
                "paths": [{"id": "bars", "medium": "footing-rebar", "line": [[0, 0], [100, 0]]}]
                """);

        assertThat(costs).singleElement().satisfies(cost -> {
            assertThat(cost.path()).isEqualTo("bars");
            assertThat(cost.copper().map(Copper::length)).contains(Length.ofFeet(10));
        });
    }

    /** No time is left, or somebody asks to stop: the path is named and nothing is supposed about it. */
    @Test
    void whatThereIsNoTimeForIsNotComputed() {
        Site site = SiteReader.parse(Sites.openFloor(100, 10, """
                "services": [{"id": "s", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "r1", $rod, $at(0, 10)}, {"id": "r2", $rod, $at(100, 0)}],
                "paths": [{"id": "bars", "medium": "footing-rebar", "line": [[0, 0], [100, 0]]}]
                """), "test");
        RouteLimits none = RouteLimits.none();
        RouteLimits noTime = new RouteLimits(Optional.of(Duration.ZERO), none.stop(), none.progress());
        RouteLimits stopped = new RouteLimits(none.time(), () -> true, none.progress());
        ExclusionCost unknown = new ExclusionCost("bars", ExclusionCost.Outcome.NOT_COMPUTED, Optional.empty());

        assertThat(WhatExclusionsCost.of(site, noTime)).containsExactly(unknown);
        assertThat(WhatExclusionsCost.of(site, stopped)).containsExactly(unknown);
    }

    @Test
    void searchesOneAfterTheOtherShareTheTime() throws InterruptedException {
        RouteLimits none = RouteLimits.none();
        Countdown second =
                Countdown.of(new RouteLimits(Optional.of(Duration.ofSeconds(1)), none.stop(), none.progress()));
        Thread.sleep(5);
        Duration left = second.left().time().orElseThrow();

        assertThat(left).isBetween(Duration.ZERO, Duration.ofMillis(995));
        Thread.sleep(5);
        assertThat(second.left().time().orElseThrow()).isLessThan(left);
        assertThat(Countdown.of(none).left().time()).isEmpty();
    }

    @Test
    void aSiteWithNothingExcludedHasNoCosts() {
        assertThat(costs("""
                        "services": [{"id": "s", $copper(500 kcmil), $at(0, 0)}],
                        "electrodes": [{"id": "r1", $rod, $at(0, 10)}]
                        """)).isEmpty();
    }

    @Test
    void aPipeBeyondFiveFeetWouldCarryFurtherIn() {
        // The pipe runs from x = 90 to x = 0; 5 ft of it may carry. To x = 85 it is 85 ft of copper, to x = 0 none.
        List<ExclusionCost> costs = costs("""
                "services": [{"id": "s", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "w", $water, $at(90, 0)}],
                "paths": [{"id": "main", "medium": "water-pipe", "electrode": "w", "line": [[90, 0], [0, 0]]}]
                """);

        assertThat(costs)
                .singleElement()
                .satisfies(cost -> assertThat(cost.copper().map(Copper::length)).contains(Length.ZERO));
    }
}
