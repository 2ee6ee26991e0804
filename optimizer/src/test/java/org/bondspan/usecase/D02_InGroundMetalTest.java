package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: metal in-ground support is connected with the frame it is part of; its connections are landing
 * places of that frame. One of all is enough.
 */
class D02_InGroundMetalTest {
    private static Routed route(String frame, String electrodes) {
        return Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(350 kcmil), $at(3, 0)}],
                "electrodes": [%s],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                  "top": 20, "continuous": true%s}]""".formatted(electrodes, frame)));
    }

    private static final String PILE = "{\"id\": \"G\", $inGround, \"frame\": \"F\", $at(3, %d)}";

    @Test
    void isConnectedWithItsFrame() {
        Routed routed = route("", PILE.formatted(10));
        assertThat(routed.conductors()).containsExactly("2 AWG 3 from S to F");
        assertThat(routed.electrodes()).isEqualTo("G bonded");
    }

    /** Its connection 2 ft from S is nearer than the column 3 ft away. */
    @Test
    void givesItsFrameALandingPlace() {
        Routed routed = route("", PILE.formatted(2));
        assertThat(routed.sizes()).isEqualTo("2 AWG 2");
        assertThat(routed.bonds()).isEqualTo("F bonded");
    }

    @Test
    void givesNoneWhenItDoesNotQualify() {
        Routed routed =
                route("", PILE.formatted(2).replace("$inGround", "\"type\": \"in-ground-metal\", \"earthContact\": 9"));
        assertThat(routed.sizes()).isEqualTo("2 AWG 3");
        assertThat(routed.electrodes()).isEqualTo("G not-an-electrode");
    }

    /** The frame carries nothing: 10 ft to the pile's own connection, where the frame is bonded too. */
    @Test
    void isReachedByItselfWhereTheFrameMayNotCarry() {
        assertThat(route(", \"mayCarry\": false", PILE.formatted(10)).sizes()).isEqualTo("2 AWG 10");
    }

    @Test
    void isConnectedOnceWhenThereAreSeveral() {
        Routed routed = route("", PILE.formatted(10) + ", {\"id\": \"H\", $inGround, $at(17, 20)}");
        assertThat(routed.sizes()).isEqualTo("2 AWG 3");
        assertThat(routed.electrodes()).isEqualTo("G bonded, H not-needed");
    }

    /** Edition 2014: a frame bolted to a footing is an electrode, whether or not the site asks for its bond. */
    @Test
    void makesTheFrameAnElectrodeInTheEditionOf2014() {
        String site = Sites.openFloor(20, 20, """
                "codeEdition": %d,
                "services": [{"id": "S", $copper(350 kcmil), $at(3, 0)}],
                "electrodes": [{"id": "E", $footing, $at(3, 1), "tiedToFrame": {"frame": "F", "means": "weld"}}],
                "paths": [{"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [0, 20]},
                  "top": 20, "continuous": true, "bondingRequired": false}]""");
        assertThat(Routed.of(site.formatted(2014)).sizes()).isEqualTo("2 AWG 3");
        assertThat(Routed.of(site.formatted(2020)).sizes()).isEqualTo("4 AWG 1");
    }
}
