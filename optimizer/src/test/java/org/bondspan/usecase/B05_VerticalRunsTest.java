package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: vertical runs, on one level and by risers; one that several share counts once. */
class B05_VerticalRunsTest {
    private static final String TWO_LEVELS = """
            {"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0}},
            {"id": "L2", "floor": 12, "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0}}""";

    private static final String RISER = """
            "risers": [{"id": "U", "at": [10, 10], "levels": ["L1", "L2"]}],""";

    private static String connection(String level, String at) {
        return "\"connections\": [{\"level\": \"%s\", \"at\": [%s]}]".formatted(level, at);
    }

    /** The floor runs at height 10: S climbs 6 from 4, across 20, R down 10. */
    @Test
    void leadToAndFromTheOpenFloor() {
        Routed routed = Routed.of(Sites.site(
                "{\"id\": \"L1\", \"outline\": [[0, 0], [20, 0], [20, 20], [0, 20]], \"open\": {\"height\": 10}}",
                """
                "services": [{"id": "S", $copper(3/0 AWG), "connections": [{"at": [0, 0], "height": 4}]}],
                "electrodes": [{"id": "R", $rod, $at(20, 0)}]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 36");
        assertThat(routed.layout().conductors()).singleElement().satisfies(conductor -> {
            assertThat(routed.length(conductor.length().vertical())).isEqualTo("16");
            assertThat(routed.length(conductor.length().plan())).isEqualTo("20");
        });
    }

    /** Two rods one above the other, at 0 and 5: the second lies on the run to the first. */
    @Test
    void countOnceWhereSeveralShareThem() {
        Routed routed = Routed.of(Sites.site(
                "{\"id\": \"L1\", \"outline\": [[0, 0], [20, 0], [20, 20], [0, 20]], \"open\": {\"height\": 10}}",
                """
                "services": [{"id": "S", $copper(3/0 AWG), "connections": [{"at": [0, 0], "height": 10}]}],
                "electrodes": [
                  {"id": "R0", $rod, $at(20, 0)},
                  {"id": "R1", $rod, "connections": [{"at": [20, 0], "height": 5}]}
                ]"""));
        assertThat(routed.sizes()).isEqualTo("6 AWG 30");
    }

    /** 10 + 10 to the riser, 12 up, 10 + 10 on. */
    @Test
    void joinLevelsAtARiser() {
        Routed routed = Routed.of(
                Sites.site(TWO_LEVELS, RISER + """
                "services": [{"id": "S", $copper(3/0 AWG), %s}],
                "electrodes": [{"id": "R", $rod, %s}]""".formatted(connection("L1", "0, 0"), connection("L2", "20, 20"))));
        assertThat(routed.sizes()).isEqualTo("6 AWG 52");
    }

    @Test
    void joinLevelsNowhereElse() {
        Routed routed = Routed.of(
                Sites.site(TWO_LEVELS, """
                "services": [{"id": "S", $copper(3/0 AWG), %s}],
                "electrodes": [{"id": "R", $rod, %s}]""".formatted(connection("L1", "10, 10"), connection("L2", "10, 10"))));
        assertThat(routed.status().label()).isEqualTo("impossible");
    }

    /** 10 to the riser, 12 up, 10 to each rod. */
    @Test
    void countARiserOnceForSeveral() {
        Routed routed = Routed.of(Sites.site(
                TWO_LEVELS,
                RISER
                        + """
                "services": [{"id": "S", $copper(3/0 AWG), %s}],
                "electrodes": [{"id": "R0", $rod, %s}, {"id": "R1", $rod, %s}]""".formatted(
                                connection("L1", "10, 0"), connection("L2", "0, 10"), connection("L2", "20, 10"))));
        assertThat(routed.sizes()).isEqualTo("6 AWG 42");
    }

    /** A riser through three levels passes the middle one, which has neither floor nor line: 2 x 12 + 10 + 10. */
    @Test
    void passALevelBetween() {
        Routed routed = Routed.of(
                Sites.site(TWO_LEVELS + """
                , {"id": "L3", "floor": 24, "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0}}""", """
                "risers": [{"id": "U", "at": [10, 10], "levels": ["L1", "L2", "L3"]}],
                "services": [{"id": "S", $copper(3/0 AWG), %s}],
                "electrodes": [{"id": "R", $rod, %s}]""".formatted(connection("L1", "10, 0"), connection("L3", "10, 20"))));
        assertThat(routed.sizes()).isEqualTo("6 AWG 44");
    }
}
