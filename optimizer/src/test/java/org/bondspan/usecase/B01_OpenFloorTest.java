package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: on an open floor the answer is the least tree of runs parallel to x and y. Known least trees:
 * three places have half the perimeter of their rectangle; the corners of a unit square need 3, the tips of a plus sign
 * of diameter 2 need 4 (Hwang, SIAM J. Appl. Math. 30, 1976, whose ratio 3/2 the plus sign attains).
 */
class B01_OpenFloorTest {
    /** All copper is 6 AWG: a 3/0 service needs 4 AWG, rods limit it to 6. */
    private static Routed rods(String service, String... rods) {
        StringBuilder electrodes = new StringBuilder();
        for (int i = 0; i < rods.length; i++) {
            electrodes.append(i == 0 ? "" : ", ").append("{\"id\": \"R%d\", $rod, $at(%s)}".formatted(i, rods[i]));
        }
        return Routed.of(Sites.openFloor(40, 40, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(%s)}],
                "electrodes": [%s]""".formatted(service, electrodes)));
    }

    @Test
    void joinsThreePlacesByHalfThePerimeter() {
        assertThat(rods("0, 0", "30, 10", "20, 40").sizes()).isEqualTo("6 AWG 70");
    }

    @Test
    void joinsTheCornersOfASquareByThreeSides() {
        assertThat(rods("0, 0", "10, 0", "0, 10", "10, 10").sizes()).isEqualTo("6 AWG 30");
    }

    @Test
    void joinsTheTipsOfAPlusSignInItsMiddle() {
        Routed routed = rods("10, 0", "0, 10", "20, 10", "10, 20");
        assertThat(routed.sizes()).isEqualTo("6 AWG 40");
        assertThat(routed.layout().joints()).hasSize(1);
        assertThat(routed.weight()).isEqualByComparingTo("3.24"); // 40 x 0.081
    }

    /** Two squares of 10, 10 apart: 3 x 10 twice and 10 between. */
    @Test
    void joinsALadderOfSixPlaces() {
        assertThat(rods("0, 0", "0, 10", "10, 0", "10, 10", "20, 0", "20, 10").sizes())
                .isEqualTo("6 AWG 50");
    }

    /** The floor is an L: the corner that is missing is gone round, 20 + 20 instead of the bee line. */
    @Test
    void staysInsideTheOutline() {
        Routed routed = Routed.of(Sites.site("""
                {"id": "L1", "outline": [[0, 0], [10, 0], [10, 10], [30, 10], [30, 20], [0, 20]], "open": {"height": 0}}""", """
                "services": [{"id": "S", $copper(3/0 AWG), $at(10, 0)}],
                "electrodes": [{"id": "R", $rod, $at(30, 10)}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 30");
        assertThat(routed.layout().conductors())
                .singleElement()
                .satisfies(conductor -> assertThat(conductor.line()).hasSize(3));
    }

    /** U-shaped floor, 6 wide legs: from one tip to the other round the notch. */
    @Test
    void goesRoundANotch() {
        Routed routed = Routed.of(Sites.site("""
                {"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [14, 20], [14, 6], [6, 6], [6, 20], [0, 20]], "open": {"height": 0}}""", """
                "services": [{"id": "S", $copper(3/0 AWG), $at(6, 20)}],
                "electrodes": [{"id": "R", $rod, $at(14, 20)}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 36"); // 14 down, 8 across, 14 up
    }
}
