package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: no conductor runs inside a closed area; along an edge it may, also one that two areas share. */
class B02_ClosedAreasTest {
    private static Routed route(String areas, String service, String rod, String more) {
        return Routed.of(Sites.site("""
                {"id": "L1", "outline": [[0, 0], [20, 0], [20, 20], [0, 20]], "open": {"height": 0}, "closedAreas": [%s]}""".formatted(areas), """
                "services": [{"id": "S", $copper(3/0 AWG), $at(%s)}],
                "electrodes": [{"id": "R", $rod, $at(%s)}]%s""".formatted(service, rod, more)));
    }

    private static final String MIDDLE = "{\"id\": \"A\", \"outline\": [[5, 5], [15, 5], [15, 15], [5, 15]]}";
    private static final String HALVES = """
            {"id": "A", "outline": [[5, 5], [10, 5], [10, 15], [5, 15]]},
            {"id": "B", "outline": [[10, 5], [15, 5], [15, 15], [10, 15]]}""";

    /** 20 ft across and 5 ft aside, twice. */
    @Test
    void areGoneRound() {
        assertThat(route(MIDDLE, "10, 0", "10, 20", "").sizes()).isEqualTo("6 AWG 30");
    }

    @Test
    void letCopperAlongAnEdgeThatTwoShare() {
        assertThat(route(HALVES, "10, 0", "10, 20", "").sizes()).isEqualTo("6 AWG 20");
        assertThat(route(HALVES, "0, 10", "20, 10", "").sizes()).isEqualTo("6 AWG 30");
    }

    /** Part of the edge x = 10 lies inside C: there is no way along it, and 5 ft aside, twice. */
    @Test
    void closeAnEdgeThatLiesInsideAnother() {
        String third = ", {\"id\": \"C\", \"outline\": [[9, 9], [11, 9], [11, 11], [9, 11]]}";
        assertThat(route(HALVES + third, "10, 0", "10, 20", "").sizes()).isEqualTo("6 AWG 30");
    }

    /** Two areas that touch in one corner leave no way between them but through that corner. */
    @Test
    void letCopperThroughACornerWhereTwoTouch() {
        Routed routed = route("""
                {"id": "A", "outline": [[0, 5], [10, 5], [10, 10], [0, 10]]},
                {"id": "B", "outline": [[10, 10], [20, 10], [20, 15], [10, 15]]}""", "10, 0", "10, 20", "");
        assertThat(routed.sizes()).isEqualTo("6 AWG 20");
    }

    /** Beyond the outline on the south side: only the north side is left, 15 up and down. */
    @Test
    void mayReachBeyondTheOutline() {
        Routed routed =
                route("{\"id\": \"A\", \"outline\": [[5, -5], [15, -5], [15, 15], [5, 15]]}", "0, 0", "20, 0", "");
        assertThat(routed.sizes()).isEqualTo("6 AWG 50");
    }

    /** The area's south edge is the outline's: copper may run along it. */
    @Test
    void letCopperAlongTheOutline() {
        Routed routed =
                route("{\"id\": \"A\", \"outline\": [[5, 0], [15, 0], [15, 15], [5, 15]]}", "0, 0", "20, 0", "");
        assertThat(routed.sizes()).isEqualTo("6 AWG 20");
    }

    @Test
    void arePassedByADrawnLine() {
        Routed routed = route(MIDDLE, "10, 0", "10, 20", """
                , "paths": [{"id": "P", "medium": "copper", "line": [[10, 5], [10, 15]]}]""");
        assertThat(routed.sizes()).isEqualTo("6 AWG 20");
    }

    /** The rod stands in the area; a line leads to it from the edge. */
    @Test
    void areEnteredByADrawnLineOnly() {
        assertThat(route(MIDDLE, "10, 0", "10, 10", "").status().label()).isEqualTo("impossible");
        assertThat(route(MIDDLE, "10, 0", "10, 10", """
                , "paths": [{"id": "P", "medium": "copper", "line": [[10, 5], [10, 10]]}]""").sizes()).isEqualTo("6 AWG 10");
    }
}
