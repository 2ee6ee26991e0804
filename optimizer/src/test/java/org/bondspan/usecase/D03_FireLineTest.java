package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: a fire main is an electrode or is bonded only, as the site file says; a caution either way. */
class D03_FireLineTest {
    private static Routed route(String choice) {
        return Routed.of(Sites.openFloor(20, 20, """
                "fireLine": "%s",
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(0, 4)}, {"id": "W", $water, "use": "fire", "connections": []}],
                "paths": [{"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[20, 0], [5, 0]]}]""".formatted(choice)));
    }

    @Test
    void isAnElectrodeByChoice() {
        Routed routed = route("electrode");
        assertThat(routed.sizes()).isEqualTo("2 AWG 15, 6 AWG 4");
        assertThat(routed.electrodes()).isEqualTo("R bonded, W bonded");
        assertThat(routed.layout().findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("NFPA 13"));
    }

    @Test
    void isBondedAnywhereByChoice() {
        Routed routed = route("bond-only");
        assertThat(routed.sizes()).isEqualTo("2 AWG 5, 6 AWG 4");
        assertThat(routed.electrodes()).isEqualTo("R bonded, W not-an-electrode");
        assertThat(routed.layout().findings())
                .anySatisfy(finding -> assertThat(finding.message()).contains("NFPA 13"));
    }
}
