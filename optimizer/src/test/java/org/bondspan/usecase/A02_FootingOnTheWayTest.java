package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: a concrete-encased electrode is a leaf. Passed on the way, it costs no more than the make-up of
 * its own 4 AWG, 250.66(B).
 */
class A02_FootingOnTheWayTest {
    private static String site(String makeUp) {
        return Sites.openFloor(40, 20, """
                "makeUpPerEnd": %s,
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "E", $footing, $at(10, 0)},
                  {"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}
                ]""".formatted(makeUp));
    }

    /** 2 AWG: 30 ft and 2 ft make-up at S and W each; 4 AWG: 2 ft make-up at E, none at the tap. */
    @Test
    void costsItsMakeUpWhenPassed() {
        Routed routed = Routed.of(site("2"));
        assertThat(routed.conductors())
                .containsExactlyInAnyOrder("2 AWG 12 from S to J1", "4 AWG 2 from J1 to E", "2 AWG 22 from J1 to W");
        assertThat(routed.weight()).isEqualByComparingTo("7.2244"); // 34 x 0.2049 + 2 x 0.1289
    }

    @Test
    void costsNothingWithoutMakeUp() {
        Routed routed = Routed.of(site("0"));
        assertThat(routed.sizes()).isEqualTo("2 AWG 30");
        assertThat(routed.electrodes()).isEqualTo("E bonded, W bonded");
    }

    /** The way in at one stub and out at another is no way: the lines reach W only through E's bars. */
    @Test
    void isNoWayFromStubToStub() {
        Routed routed = Routed.of(Sites.linesOnly(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "E", $footing, "connections": [{"at": [10, 0]}, {"at": [20, 0]}]},
                  {"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}
                ],
                "paths": [
                  {"id": "P1", "medium": "copper", "line": [[0, 0], [10, 0]]},
                  {"id": "P2", "medium": "copper", "line": [[20, 0], [30, 0]]}
                ]"""));
        assertThat(routed.status().label()).isEqualTo("impossible");
        assertThat(routed.subjects("250.50")).containsExactly("W");
    }
}
