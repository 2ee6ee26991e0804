package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.bondspan.layout.Status;
import org.junit.jupiter.api.Test;

/** FEATURE UNDER TEST: more to connect than an exact search can take; the answer is good, and its limit is told. */
class A05_ManyRodsTest {
    private static Routed rods(int across, int along, int apart) {
        String rods = IntStream.range(0, across * along)
                .mapToObj(i -> "{\"id\": \"R%d\", $rod, $at(%d, %d)}"
                        .formatted(i, 10 + i % across * apart, 10 + i / across * apart))
                .collect(Collectors.joining(",\n"));
        return Routed.of(Sites.openFloor(20 + across * apart, 20 + along * apart, """
                "services": [{"id": "S", $copper(350 kcmil), $at(0, 10)}],
                "electrodes": [%s]""".formatted(rods)));
    }

    /**
     * Rods on all corners of a square lattice: by the theorem of Hanan (SIAM Journal on Applied Mathematics 14, 1966)
     * some least tree runs along the lattice lines, and as all their crossings are rods, n rods take n - 1 steps. 99
     * steps of 10 ft, and 10 ft to the service, all 6 AWG, 250.66(A).
     */
    @Test
    void connectsAHundredRods() {
        Routed routed = rods(10, 10, 10);
        assertThat(routed.sizes()).isEqualTo("6 AWG 1000");
        assertThat(routed.layout().electrodes())
                .hasSize(100)
                .allMatch(electrode -> electrode.state().label().equals("bonded"));
        assertThat(routed.layout().lowerBound().orElseThrow())
                .isLessThanOrEqualTo(routed.layout().copper().orElseThrow().weight());
        boolean isProven = routed.layout().gapPercent().signum() == 0;
        assertThat(routed.status()).isEqualTo(isProven ? Status.LEAST : Status.BEST_FOUND);
        if (!isProven) {
            assertThat(routed.messages("proof"))
                    .containsExactly("Too many things to connect for a full proof; in a time limit the search may find"
                            + " better.");
        }
    }

    @Test
    void connectsThirtyOneRods() {
        assertThat(rods(31, 1, 6).sizes()).isEqualTo("6 AWG 190"); // 10 + 30 x 6
    }
}
