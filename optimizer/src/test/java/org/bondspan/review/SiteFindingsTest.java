package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;

/** 250.53: what is to be said of the electrodes whatever the route. */
class SiteFindingsTest {
    private static String site(String electrodes) {
        return Sites.linesOnly(100, 40, """
                "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
                "electrodes": [%s],
                "paths": []""".formatted(electrodes));
    }

    private static final String WATER =
            "{\"id\": \"W\", $water, \"connections\": [{\"at\": [50, 0], \"fromEntrance\": 2}]}";

    @Test
    void waterPipeAloneWantsASupplement() {
        assertThat(Judged.of(site(WATER), "A 1/0 AWG S > W").violations()).containsExactly("250.53(D)(2) W");
        assertThat(Judged.of(site(WATER + ", {\"id\": \"C\", $footing, $at(0, 9)}"), "A 1/0 AWG S > W\nB 4 AWG S > C")
                        .violations())
                .isEmpty();
    }

    @Test
    void aSingleRodAbove25OhmsWantsCompany() {
        String rod = WATER + ", {\"id\": \"R\", \"resistance\": %s, $rod, $at(0, 9)}";
        String tie = "A 1/0 AWG S > W\nB 6 AWG S > R";
        assertThat(Judged.of(site(rod.formatted("25")), tie).violations()).isEmpty();
        assertThat(Judged.of(site(rod.formatted("25.1")), tie).violations()).containsExactly("250.53(A)(2) R");
    }

    @Test
    void rodsStandExactlySixFeetApartOrMore() {
        String rods = "{\"id\": \"R1\", $rod, $at(0, 9)}, {\"id\": \"R2\", $rod, $at(0, %s)}";
        String tie = "A 6 AWG S > R1\nB 6 AWG R1 > R2";
        assertThat(Judged.of(site(rods.formatted("15")), tie).violations()).isEmpty();
        assertThat(Judged.of(site(rods.formatted("14.9")), tie).violations()).containsExactly("250.53(A)(3) R2");
    }

    @Test
    void aRingLiesExactly30InchesDeepOrMore() {
        String ring = "{\"id\": \"G\", $ring2, $at(0, 9)}";
        assertThat(Judged.of(site(ring), "A 2 AWG S > G").violations()).isEmpty();
        String shallow = site(ring).replace("\"depth\": 2.5", "\"depth\": 2.4");
        assertThat(Judged.of(shallow, "A 2 AWG S > G").violations()).containsExactly("250.53(F) G");
    }
}
