package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: lines join where they share a vertex or where a vertex of one lies on the other; two that only
 * cross do not join, but an open floor joins both.
 */
class B03_LinesTest {
    private static final String BODY = """
            "services": [{"id": "S", $copper(3/0 AWG), $at(0, 10)}],
            "electrodes": [{"id": "R", $rod, $at(10, 20)}],
            "paths": [
              {"id": "P1", "medium": "copper", "line": %s},
              {"id": "P2", "medium": "copper", "line": %s}
            ]""";

    private static Routed onLines(String first, String second) {
        return Routed.of(Sites.linesOnly(20, 20, BODY.formatted(first, second)));
    }

    @Test
    void doNotJoinWhereTheyOnlyCross() {
        assertThat(onLines("[[0, 10], [20, 10]]", "[[10, 0], [10, 20]]")
                        .status()
                        .label())
                .isEqualTo("impossible");
    }

    @Test
    void joinAtASharedVertex() {
        assertThat(onLines("[[0, 10], [10, 10], [20, 10]]", "[[10, 0], [10, 10], [10, 20]]")
                        .sizes())
                .isEqualTo("6 AWG 20");
    }

    @Test
    void joinWhereAVertexOfOneLiesOnTheOther() {
        assertThat(onLines("[[0, 10], [20, 10]]", "[[10, 0], [10, 10], [10, 20]]")
                        .sizes())
                .isEqualTo("6 AWG 20");
        assertThat(onLines("[[0, 10], [20, 10]]", "[[10, 10], [10, 20]]").sizes())
                .isEqualTo("6 AWG 20");
        assertThat(onLines("[[0, 10], [10, 10]]", "[[10, 0], [10, 20]]").sizes())
                .isEqualTo("6 AWG 20");
    }

    /** Heights 3 and 7 join in plan at (10, 10) by a vertical run of 4 ft; S climbs 3, R descends 7. */
    @Test
    void joinInPlanByAVerticalRun() {
        assertThat(onLines("[[0, 10, 3], [10, 10, 3]]", "[[10, 10, 7], [10, 20, 7]]")
                        .sizes())
                .isEqualTo("6 AWG 34"); // 3 + 10 + 4 + 10 + 7
    }

    @Test
    void joinTheFloorAllAlongEvenWhereTheyOnlyCross() {
        Routed routed =
                Routed.of(Sites.openFloor(20, 20, BODY.formatted("[[0, 10], [20, 10]]", "[[10, 0], [10, 20]]")));
        assertThat(routed.sizes()).isEqualTo("6 AWG 20");
    }

    /** An oblique line of 30-40-50: one straight run instead of 70 by the floor; S and R are at its vertices. */
    @Test
    void joinTheFloorAtTheirVerticesWhenOblique() {
        Routed routed = Routed.of(Sites.openFloor(30, 40, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(30, 40)}],
                "paths": [{"id": "P", "medium": "copper", "line": [[0, 0], [30, 40]]}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 50");
    }

    /** The floor does not join an oblique line between its vertices: no shortcut from S at the line's middle. */
    @Test
    void doNotJoinTheFloorBetweenVerticesWhenOblique() {
        Routed routed = Routed.of(Sites.openFloor(30, 40, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(15, 0)}],
                "electrodes": [{"id": "R", $rod, $at(30, 40)}],
                "paths": [{"id": "P", "medium": "copper", "line": [[0, 0], [30, 40]]}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 55"); // 15 + 40 by the floor; 15 + 50 by the line
    }

    /** The joint of the three lies at (10, 10) of the line from S to R0, where the second line begins. */
    @Test
    void joinInATee() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(0, 10)}],
                "electrodes": [{"id": "R0", $rod, $at(20, 10)}, {"id": "R1", $rod, $at(10, 20)}],
                "paths": [
                  {"id": "P1", "medium": "copper", "line": [[0, 10], [20, 10]]},
                  {"id": "P2", "medium": "copper", "line": [[10, 10], [10, 20]]}
                ]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 30");
        assertThat(routed.layout().joints())
                .singleElement()
                .satisfies(joint -> assertThat(joint.conductors()).hasSize(3));
    }
}
