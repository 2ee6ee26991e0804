package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: of several concrete-encased electrodes one is enough, 250.52(A)(3); 250.50 Exception. */
class D01_FootingsTest {
    private static Routed route(String head, String first, String second) {
        return Routed.of(Sites.site("""
                {"id": "L1", "outline": [[0, 0], [40, 0], [40, 20], [0, 20]], "open": {"height": 0},
                 "closedAreas": [{"id": "A", "outline": [[20, 10], [30, 10], [30, 20], [20, 20]]}]}""", """
                %s"services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "E1", $footing, %s}, {"id": "E2", $footing, %s}]""".formatted(head, first, second)));
    }

    /** 350 kcmil calls for 2 AWG, a footing for 4 AWG at most. */
    @Test
    void areConnectedOnceAndAtTheNearest() {
        Routed routed = route("", "$at(15, 0)", "$at(5, 0)");
        assertThat(routed.sizes()).isEqualTo("4 AWG 5");
        assertThat(routed.weight()).isEqualByComparingTo("0.6445"); // 5 x 0.1289
        assertThat(routed.electrodes()).isEqualTo("E1 not-needed, E2 bonded");
    }

    @Test
    void areConnectedWhereTheSiteWantsThemUsed() {
        assertThat(route("", "$at(15, 0), \"use\": true", "$at(5, 0)").electrodes())
                .isEqualTo("E1 bonded, E2 not-needed");
        assertThat(route("", "$at(15, 0), \"use\": true", "$at(5, 0), \"use\": true")
                        .sizes())
                .isEqualTo("4 AWG 15");
    }

    /** E2 stands inside a closed area: it is never the chosen one. */
    @Test
    void areNotChosenWhereTheyCannotBeReached() {
        assertThat(route("", "$at(15, 0)", "$at(25, 15)").sizes()).isEqualTo("4 AWG 15");
    }

    @Test
    void needNotBeReachedInAnExistingBuilding() {
        Routed routed = route("\"existingBuilding\": true, ", "$at(15, 0)", "$at(5, 0), \"reachable\": false");
        assertThat(routed.electrodes()).isEqualTo("E1 bonded, E2 not-needed");
        assertThat(routed.sizes()).isEqualTo("4 AWG 15");
    }

    @Test
    void doNotCountWhenTheyDoNotQualify() {
        Routed routed = route("", "$at(15, 0)", "$at(5, 0), \"isolated\": true");
        assertThat(routed.electrodes()).isEqualTo("E1 bonded, E2 not-an-electrode");
    }
}
