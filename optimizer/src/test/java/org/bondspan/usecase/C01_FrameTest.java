package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: a continuous frame carries over any length at any size without copper, 250.68(C)(2), and is
 * bonded by the way, 250.104(C).
 */
class C01_FrameTest {
    private static String site(String frame, String more) {
        return Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(3, 0)}],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [17, 0], "fromEntrance": 0}]}%s],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                  "top": 20, "continuous": true%s}]""".formatted(more, frame));
    }

    /** 3 ft of 2 AWG to a column and 3 from the next one, instead of 14 between S and W and 3 to the frame. */
    @Test
    void carriesBetweenItsColumns() {
        Routed routed = Routed.of(site("", ""));
        assertThat(routed.conductors()).containsExactlyInAnyOrder("2 AWG 3 from S to F", "2 AWG 3 from F to W");
        assertThat(routed.links()).containsExactly("F 0 from F to F");
        assertThat(routed.weight()).isEqualByComparingTo("1.2294"); // 6 x 0.2049
        assertThat(routed.bonds()).isEqualTo("F bonded");
    }

    @Test
    void isBondedOnlyWhereItMayNotCarry() {
        Routed routed = Routed.of(site(", \"mayCarry\": false", ""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 17");
        assertThat(routed.links()).isEmpty();
    }

    @Test
    void isLeftAloneWhereItMayNotCarryAndNeedsNoBond() {
        Routed routed = Routed.of(site(", \"mayCarry\": false, \"bondingRequired\": false", ""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 14");
    }

    /** Not continuous: carries nothing, is not connected as a whole. */
    @Test
    void isLeftAloneWhereItIsNotContinuous() {
        Routed routed = Routed.of(site("", "").replace("\"continuous\": true", "\"continuous\": false"));
        assertThat(routed.sizes()).isEqualTo("2 AWG 14");
        assertThat(routed.bonds()).doesNotContain("F bonded");
    }

    private static String footing(String means) {
        return ", {\"id\": \"E\", $footing, $at(17, 5), \"tiedToFrame\": {\"frame\": \"F\", \"means\": \"%s\"}}"
                .formatted(means);
    }

    /** Bars tied to its bolts: no copper to them. */
    @Test
    void connectsAFootingByItsBolts() {
        for (String means : new String[] {"weld", "exothermic", "tie-wire"}) {
            Routed routed = Routed.of(site("", footing(means)));
            assertThat(routed.sizes()).as(means).isEqualTo("2 AWG 6");
            assertThat(routed.electrodes()).isEqualTo("W bonded, E bonded");
        }
    }

    /** Bolts set in wet concrete do not count: 3 ft of 4 AWG from the column line x = 20. */
    @Test
    void doesNotConnectAFootingByBoltsSetWet() {
        Routed routed = Routed.of(site("", footing("wet-set")));
        assertThat(routed.sizes()).isEqualTo("2 AWG 6, 4 AWG 5"); // (17, 5) hangs from W's place (17, 0)
    }

    @Test
    void doesNotConnectAFootingWhereItMayNotCarry() {
        Routed routed = Routed.of(site(", \"mayCarry\": false", footing("weld")));
        assertThat(routed.sizes()).isEqualTo("2 AWG 17, 4 AWG 5");
    }

    /** The bolts alone do not bring the frame into the tie: it is reached by copper, 3 ft at its own size. */
    @Test
    void isNotConnectedByBoltsAlone() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(3, 0)}],
                "electrodes": [{"id": "E", $footing, $at(3, 1), "tiedToFrame": {"frame": "F", "means": "weld"}}],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                  "top": 20, "continuous": true}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 3");
        assertThat(routed.conductors()).containsExactly("2 AWG 3 from S to F");
    }

    /** Beams at height 8 along y = 0; S 3 ft under one, W 2 ft under another: copper rises to the beam. */
    @Test
    void isLandedOnAnywhereOnABeam() {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), "connections": [{"at": [7, 0], "height": 5}]}],
                "electrodes": [{"id": "W", $water, "connections": [{"at": [20, 13], "height": 6, "fromEntrance": 0}]}],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                  "top": 20, "beamHeight": 8, "continuous": true}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 5");
    }

    /** A column through two levels without a riser: 1 ft on each. */
    @Test
    void joinsLevelsThatCopperCannotJoin() {
        String level = "\"outline\": [[0, 0], [20, 0], [20, 20], [0, 20]], \"open\": {\"height\": 0}}";
        Routed routed =
                Routed.of(Sites.site("{\"id\": \"L1\", " + level + ", {\"id\": \"L2\", \"floor\": 12, " + level, """
                "services": [{"id": "S", $copper(350 kcmil), "connections": [{"level": "L1", "at": [1, 0]}]}],
                "electrodes": [{"id": "W", $water, "connections": [{"level": "L2", "at": [19, 0], "fromEntrance": 0}]}],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0]},
                  "levels": ["L1", "L2"], "top": 12, "continuous": true}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 2");
    }
}
