package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Copper;
import org.bondspan.layout.ExclusionCost;
import org.bondspan.units.Length;
import org.junit.jupiter.api.Test;

/** Sums by hand; geometry is chosen so that what the excluded metal would replace is a plain difference. */
class G01_WhatExclusionsCostTest {
    private static List<ExclusionCost> costs(String body) {
        return WhatExclusionsCost.of(SiteReader.parse(Sites.openFloor(100, 10, body), "test"));
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
