package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.bondspan.finding.Finding;
import org.junit.jupiter.api.Test;

/**
 * FEATURE UNDER TEST: a ring joins its own connections where the site lets it, for needs up to its own size, 250.66; it
 * is always connected, at most at its own size, 250.66(C).
 */
class C03_RingTest {
    /** 4 x 500 kcmil: 3/0 to W. The ring has a connection 3 ft from S and one 3 ft from W. */
    private static Routed route(String ring, boolean mayInterconnect) {
        return Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(500 kcmil, 4), $at(0, 0)}],
                "electrodes": [
                  {"id": "G", $%s, "connections": [{"at": [3, 0]}, {"at": [17, 0]}]},
                  {"id": "W", $water, "connections": [{"at": [20, 0], "fromEntrance": 0}]}
                ],
                "paths": [{"id": "GP", "medium": "ring", "electrode": "G", "mayInterconnect": %s}]""".formatted(ring, mayInterconnect)));
    }

    /** What is said of the ring as a path: that it carries. */
    private static List<String> cautions(Routed routed) {
        return routed.layout().findings().stream()
                .filter(finding -> finding.subject().equals("GP"))
                .map(Finding::message)
                .toList();
    }

    @Test
    void carriesWhereItIsLargeEnough() {
        Routed routed = route("ring4/0", true);
        assertThat(routed.sizes()).isEqualTo("3/0 AWG 6");
        assertThat(routed.weight()).isEqualByComparingTo("3.1086"); // 6 x 0.5181
        assertThat(routed.links()).containsExactly("GP 0 from GP to G", "GP 0 from GP to GP");
        assertThat(cautions(routed)).isNotEmpty();
    }

    /** The copper passes the ring's connection; the ring hangs there. */
    @Test
    void isRefusedWhereItIsTooSmall() {
        Routed routed = route("ring2", true);
        assertThat(routed.sizes()).isEqualTo("3/0 AWG 20");
        assertThat(routed.links()).containsExactly("GP 0 from GP to G");
        assertThat(cautions(routed)).isEmpty();
        assertThat(routed.electrodes()).isEqualTo("G bonded, W bonded");
    }

    @Test
    void isRefusedWithoutLeave() {
        assertThat(route("ring4/0", false).sizes()).isEqualTo("3/0 AWG 20");
    }

    /** Alone it is bonded at its own size, whichever connection is nearer. */
    @Test
    void isBondedAtItsOwnSize() {
        Routed routed = Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(500 kcmil, 4), $at(20, 0)}],
                "electrodes": [{"id": "G", $ring2, "connections": [{"at": [0, 0]}, {"at": [17, 0]}]}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 3");
    }

    /**
     * The copper passes the ring's connections, without make-up. The ring of 2 AWG is no way for 3/0: only one
     * conductor names it, the other taps that one.
     */
    @Test
    void isNotNamedAsTheWayForMoreThanItCarries() {
        Routed routed = route("ring2", true);
        assertThat(routed.conductors()).hasSize(2).anyMatch(text -> text.matches("3/0 AWG (3|17) from S to GP"));
        assertThat(routed.conductors()).anyMatch(text -> text.matches("3/0 AWG (17|3) from C1@(3|17) to W"));
        assertThat(routed.layout().joints()).hasSize(1);
    }

    /** Two levels: a ring without a line needs no level of its own. */
    @Test
    void needsNoLevelWithoutALine() {
        String level = "\"outline\": [[0, 0], [20, 0], [20, 20], [0, 20]], \"open\": {\"height\": 0}}";
        Routed routed =
                Routed.of(Sites.site("{\"id\": \"L1\", " + level + ", {\"id\": \"L2\", \"floor\": 12, " + level, """
                "services": [{"id": "S", $copper(350 kcmil), "connections": [{"level": "L1", "at": [0, 0]}]}],
                "electrodes": [{"id": "G", $ring2, "connections": [{"level": "L1", "at": [5, 0]}]}],
                "paths": [{"id": "GP", "medium": "ring", "electrode": "G", "mayInterconnect": true}]"""));
        assertThat(routed.sizes()).isEqualTo("2 AWG 5");
    }
}
