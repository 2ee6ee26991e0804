package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: an installed conductor carries up to its own size for nothing and is already landed where it
 * lies.
 */
class C04_InstalledConductorTest {
    private static String body(String service, String line) {
        return """
                "makeUpPerEnd": 2,
                "services": [{"id": "S", $copper(%s), $at(0, 0)}],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [20, 0], "fromEntrance": 0}]}],
                "paths": [{"id": "K", "medium": "conductor", "size": "2 AWG", "line": %s}]""".formatted(service, line);
    }

    /** 350 kcmil needs 2 AWG: K carries 10 ft, 10 ft are new, make-up at W only. */
    @Test
    void savesNewCopperUpToItsSize() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, body("350 kcmil", "[[0, 0], [10, 0]]")));
        assertThat(routed.sizes()).isEqualTo("2 AWG 12");
        assertThat(routed.weight()).isEqualByComparingTo("2.4588"); // 12 x 0.2049
        assertThat(routed.links()).hasSize(1);
    }

    /** 500 kcmil needs 1/0: K is too small, all is new, 20 ft and make-up at both ends. */
    @Test
    void isOfNoUseBeyondItsSize() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, body("500 kcmil", "[[0, 0], [10, 0]]")));
        assertThat(routed.sizes()).isEqualTo("1/0 AWG 24");
        assertThat(routed.links()).isEmpty();
    }

    @Test
    void needsNoCopperWhereItReachesEverything() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, body("350 kcmil", "[[0, 0], [20, 0]]")));
        assertThat(routed.status().label()).isEqualTo("least");
        assertThat(routed.weight()).isEqualByComparingTo("0");
        assertThat(routed.conductors()).isEmpty();
        assertThat(routed.links()).containsExactly("K 20 from S to W");
    }

    @Test
    void isNoPlaceForNewCopper() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, body("500 kcmil", "[[0, 0], [20, 0]]")));
        assertThat(routed.status().label()).isEqualTo("impossible");
    }

    /** Tapped at (10, 0) for a rod 5 ft aside: 5 ft of 6 AWG, make-up at the rod only. */
    @Test
    void isTappedAnywhereOnAnOpenFloor() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, """
                "makeUpPerEnd": 2,
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "W", $water, "connections": [{"at": [20, 0], "fromEntrance": 0}]},
                  {"id": "R", $rod, $at(10, 5)}
                ],
                "paths": [{"id": "K", "medium": "conductor", "size": "2 AWG", "line": [[0, 0], [20, 0]]}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 7");
        assertThat(routed.layout().joints()).hasSize(1);
    }
}
