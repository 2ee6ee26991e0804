package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: a water pipe carries over its first 5 ft from the point of entrance, measured along the pipe, and
 * further in only where it is exposed and qualified persons service the installation, 250.68(C)(1).
 */
class C02_WaterPipeTest {
    /** 2 AWG from S at (0, 0); the pipe enters at (20, 0). */
    private static String site(String head, String pipe, String electrode) {
        return Sites.openFloor(20, 20, """
                %s
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "W", "type": "water-pipe"%s}],
                "paths": [{"id": "P", "medium": "water-pipe", "electrode": "W", %s}]""".formatted(head, electrode, pipe));
    }

    private static final String QUALIFIES = ", \"earthContact\": 10";
    private static final String LONG = "\"line\": [[20, 0], [5, 0]]";

    @Test
    void isLandedOnFiveFeetIn() {
        Routed routed = Routed.of(site("", LONG, QUALIFIES));
        assertThat(routed.conductors()).containsExactly("2 AWG 15 from S to P@5");
        assertThat(routed.weight()).isEqualByComparingTo("3.0735"); // 15 x 0.2049
    }

    @Test
    void isLandedOnAtItsEndWhereItIsShorter() {
        Routed routed = Routed.of(site("", "\"line\": [[20, 0], [17, 0]]", QUALIFIES));
        assertThat(routed.conductors()).containsExactly("2 AWG 17 from S to P@3");
    }

    @Test
    void carriesFurtherInOnlyWhenExposedUnderQualifiedSupervision() {
        String qualified = "\"qualifiedPersonsOnly\": true,";
        assertThat(Routed.of(site(qualified, LONG + ", \"exposed\": true", QUALIFIES))
                        .conductors())
                .containsExactly("2 AWG 5 from S to P@15");
        assertThat(Routed.of(site(qualified, LONG, QUALIFIES)).sizes()).isEqualTo("2 AWG 15");
        assertThat(Routed.of(site("", LONG + ", \"exposed\": true", QUALIFIES)).sizes())
                .isEqualTo("2 AWG 15");
    }

    /** 3 ft up, then 2 of its level run: the 5 ft point is at (18, 0), height 3. S is at height 0 below the floor's. */
    @Test
    void countsTheFiveFeetAlongThePipe() {
        Routed routed = Routed.of(site("", "\"line\": [[20, 0, 0], [20, 0, 3], [5, 0, 3]]", QUALIFIES));
        // 20 across to the entrance at height 0 beats 18 + 3 up
        assertThat(routed.conductors()).containsExactly("2 AWG 20 from S to P@0");
        Routed lifted = Routed.of(site("", "\"line\": [[20, 0, -3], [20, 0, 0], [5, 0, 0]]", QUALIFIES));
        assertThat(lifted.conductors()).containsExactly("2 AWG 18 from S to P@5");
    }

    /** Rises from -20 to 0 at (20, 0): it may be landed on up to -15 only, 15 ft below the floor. */
    @Test
    void isCutFiveFeetUpWhereItRises() {
        Routed routed = Routed.of(site("", "\"line\": [[20, 0, -20], [20, 0, 0]]", QUALIFIES));
        assertThat(routed.conductors()).containsExactly("2 AWG 35 from S to P@5");
    }

    /** S beside the entrance, a listed electrode beside the 5 ft point: the pipe is the link, 1 ft of copper each. */
    @Test
    void carriesToWhatLiesFiveFeetFurther() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(1, 0)}],
                "electrodes": [{"id": "W", $water, "connections": []}, {"id": "X", "type": "other-listed", $at(6, 0)}],
                "paths": [
                  {"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[0, 0], [0, 8]]},
                  {"id": "C1", "medium": "copper", "line": [[1, 0], [0, 0]]},
                  {"id": "C2", "medium": "copper", "line": [[6, 0], [6, 5], [0, 5]]}
                ]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 12"); // 1 and 5 + 6
        assertThat(routed.links()).containsExactly("P 0 from P@0 to W", "P 5 from P@0 to P@5");
    }

    @Test
    void doesNotCarryToWhatLiesSixFeetIn() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(1, 0)}],
                "electrodes": [{"id": "W", $water, "connections": []}, {"id": "X", "type": "other-listed", $at(6, 0)}],
                "paths": [
                  {"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[0, 0], [0, 8]]},
                  {"id": "C1", "medium": "copper", "line": [[1, 0], [0, 0]]},
                  {"id": "C2", "medium": "copper", "line": [[6, 0], [6, 6], [0, 6]]}
                ]"""));
        assertThat(routed.status().label()).isEqualTo("impossible");
        assertThat(routed.subjects("250.50")).containsExactly("X");
    }

    /** A meter 8 ft in, beyond what carries: its jumper of 4 ft counts at the pipe's size, unless installed. */
    @Test
    void needsAJumperAroundEveryBreak() {
        String meter = LONG + ", \"breaks\": [{\"distance\": 8, \"kind\": \"meter\", \"jumper\": 4%s}]";
        Routed routed = Routed.of(site("\"makeUpPerEnd\": 1,", meter.formatted(""), QUALIFIES));
        assertThat(routed.sizes()).isEqualTo("2 AWG 21"); // 15 + 2 make-up, 4 jumper without make-up
        assertThat(routed.weight()).isEqualByComparingTo("4.3029");
        Routed installed = Routed.of(site("\"makeUpPerEnd\": 1,", meter.formatted(", \"installed\": true"), QUALIFIES));
        assertThat(installed.sizes()).isEqualTo("2 AWG 17");
    }

    /** 9 ft in earth are no electrode: the piping carries nothing and is bonded anywhere, 250.104(A). */
    @Test
    void isBondedAnywhereWhereItsElectrodeDoesNotQualify() {
        Routed routed = Routed.of(site("", LONG, ", \"earthContact\": 9"));
        assertThat(routed.conductors()).containsExactly("2 AWG 5 from S to P@15");
        assertThat(routed.electrodes()).isEqualTo("W not-an-electrode");
        assertThat(routed.links()).isEmpty();
        assertThat(routed.bonds()).isEqualTo("P bonded");
    }

    /** Bonded anywhere also between its vertices: S2's way down to the pipe is perpendicular. */
    @Test
    void isBondedBetweenItsVertices() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(7, 4)}],
                "electrodes": [{"id": "R", $rod, $at(7, 10)}],
                "paths": [{"id": "P", "medium": "water-pipe", "line": [[20, 0], [5, 0]]}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 4, 6 AWG 6");
    }
}
