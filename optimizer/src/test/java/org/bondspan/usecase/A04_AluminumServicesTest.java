package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * FEATURE UNDER TEST: aluminum service conductors read the aluminum side of Table 250.66. Published answers: 2 x 500
 * kcmil aluminum 2/0 copper, to rods alone 6 AWG, to a footing 4 AWG; 4/0 aluminum 4 AWG (trade questions and answers);
 * 4 x 500 kcmil aluminum is above 1750 kcmil, so 3/0.
 */
class A04_AluminumServicesTest {
    @ParameterizedTest
    @CsvSource({
        "500 kcmil, 2, water, 2/0 AWG 30",
        "500 kcmil, 2, rod, 6 AWG 30",
        "500 kcmil, 2, footing, 4 AWG 30",
        "4/0 AWG, 1, water, 4 AWG 30",
        "500 kcmil, 4, water, 3/0 AWG 30"
    })
    void readTheirOwnSideOfTheTable(String size, int sets, String electrode, String expected) {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "services": [{"id": "S", $aluminum(%s, %d), $at(0, 0)}],
                "electrodes": [{"id": "X", $%s, "connections": [{"at": [30, 0]%s}]}]""".formatted(
                        size, sets, electrode, electrode.equals("water") ? ", \"fromEntrance\": 0" : "")));
        assertThat(routed.sizes()).isEqualTo(expected);
    }

    /** Published for copper: 3 x 600 kcmil 3/0, 350 kcmil 2 AWG, 3 x 250 kcmil 2/0, 3/0 4 AWG, 2 x 3/0 2 AWG. */
    @ParameterizedTest
    @CsvSource({
        "600 kcmil, 3, 3/0 AWG 30",
        "350 kcmil, 1, 2 AWG 30",
        "250 kcmil, 3, 2/0 AWG 30",
        "3/0 AWG, 1, 4 AWG 30",
        "3/0 AWG, 2, 2 AWG 30"
    })
    void differFromCopperOnes(String size, int sets, String expected) {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "services": [{"id": "S", $copper(%s, %d), $at(0, 0)}],
                "electrodes": [{"id": "X", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}]""".formatted(size, sets)));
        assertThat(routed.sizes()).isEqualTo(expected);
    }
}
