package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: what cannot be reached is named, with the place that comes nearest. */
class F01_UnreachableTest {
    private static final String LEVEL = """
            {"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0},
             "closedAreas": [{"id": "A", "outline": [[5, 5], [15, 5], [15, 15], [5, 15]]}]}""";

    /** The rod in the closed area: 2 ft from its south edge. */
    @Test
    void namesAnElectrodeInAClosedArea() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}, {"id": "R1", $rod, $at(8, 7)}]"""));
        assertThat(routed.status().label()).isEqualTo("impossible");
        assertThat(routed.layout().copper()).isEmpty();
        assertThat(routed.electrodes()).contains("R1 unreached");
        assertThat(routed.subjects("250.50")).containsExactly("R1");
        assertThat(routed.messages("250.50")).singleElement().asString().contains("2.00 ft");
    }

    @Test
    void namesAPipeThatCannotBeReached() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}],
                "paths": [{"id": "P", "medium": "water-pipe", "line": [[8, 8], [12, 8]]}]"""));
        assertThat(routed.subjects("250.104(A)")).containsExactly("P");
    }

    @Test
    void namesAFrameThatCannotBeReached() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 0)}],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}],
                "paths": [{"id": "F", "medium": "structural-frame", "columns": [[8, 8]], "top": 10, "continuous": true}]"""));
        assertThat(routed.subjects("250.104(C)")).containsExactly("F");
    }

    /** S2 stands in the area: with S1 it is one building, 250.58. */
    @Test
    void namesAServiceApartFromTheRest() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(350 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "B", $copper(350 kcmil), $at(10, 10)}
                ],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}]"""));
        assertThat(routed.status().label()).isEqualTo("impossible");
        assertThat(routed.subjects("250.58")).containsExactly("S2");
    }

    /** S at (50, 50), 30 ft east and north of the corner (20, 20): 42.43 ft away. R0 is not to blame. */
    @Test
    void namesAServiceOutsideTheOutlineAndNotItsOwnPlaceAsTheNearest() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [{"id": "S", $copper(350 kcmil), $at(50, 50)}],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}]"""));
        assertThat(routed.messages("250.58"))
                .singleElement()
                .asString()
                .contains("outside the outline of that level", "(20.00, 20.00)", "42.43 ft away");
        assertThat(routed.messages("250.50"))
                .singleElement()
                .asString()
                .contains("(20.00, 0.00)", "S, from which one would lead there, is cut off itself")
                .doesNotContain("outside", "50.00", "nearest");
    }

    /** A second service outside: the nearest place is one that copper reaches from the first. */
    @Test
    void namesASecondServiceOutsideTheOutline() {
        Routed routed = Routed.of(Sites.site(LEVEL, """
                "services": [
                  {"id": "S1", "supply": "A", $copper(350 kcmil), $at(0, 0)},
                  {"id": "S2", "supply": "B", $copper(350 kcmil), $at(23, 24)}
                ],
                "electrodes": [{"id": "R0", $rod, $at(20, 0)}]"""));
        assertThat(routed.messages("250.58"))
                .singleElement()
                .asString()
                .contains("outside the outline of that level", "(20.00, 20.00)", "5.00 ft away");
    }
}
