package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: copper to a rod that goes on to a water pipe has the water pipe's size, 250.64(F) and 250.66; the
 * same reading is published for a rod before a footing: 4 AWG the whole way (trade question, facts of 250.66).
 */
class A01_RodOnTheWayTest {
    private static String site(String rodAt) {
        return Sites.openFloor(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [
                  {"id": "R", $rod, $at(%s)},
                  {"id": "W", $water, "connections": [{"at": [30, 0], "fromEntrance": 0}]}
                ]""".formatted(rodAt));
    }

    /** 350 kcmil copper: 2 AWG (row "over 3/0 to 350"). S to W is 30 ft, the rod lies on it and hangs as a leaf. */
    @Test
    void takesTheSizeOfWhatLiesBeyond() {
        Routed routed = Routed.of(site("10, 0"));
        assertThat(routed.conductors()).containsExactly("2 AWG 10 from S to R", "2 AWG 20 from C1@10 to W");
        assertThat(routed.weight()).isEqualByComparingTo("6.147"); // 30 x 0.2049
    }

    /** The rod alone needs 6 AWG, 250.66(A): its leg of 5 ft hangs from the 2 AWG. */
    @Test
    void hangsFromItsOwnSmallerLegBesideTheWay() {
        Routed routed = Routed.of(site("10, 5"));
        assertThat(routed.sizes()).isEqualTo("2 AWG 30, 6 AWG 5");
        assertThat(routed.weight()).isEqualByComparingTo("6.552"); // 6.147 + 5 x 0.081
    }

    /** A rod 10 ft beyond the water pipe: its last leg stays 6 AWG. */
    @Test
    void staysSmallBeyondTheWaterPipe() {
        Routed routed = Routed.of(site("40, 0"));
        assertThat(routed.sizes()).isEqualTo("2 AWG 30, 6 AWG 10");
        assertThat(routed.weight()).isEqualByComparingTo("6.957"); // 6.147 + 10 x 0.081
    }

    /** Before a footing the rod's conductor is 4 AWG the whole way. */
    @Test
    void isFourAwgBeforeAFooting() {
        Routed routed = Routed.of(Sites.openFloor(40, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(10, 0)}, {"id": "E", $footing, $at(30, 0)}]"""));
        assertThat(routed.sizes()).isEqualTo("4 AWG 30");
        assertThat(routed.weight()).isEqualByComparingTo("3.867"); // 30 x 0.1289
    }
}
