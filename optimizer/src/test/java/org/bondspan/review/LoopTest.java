package org.bondspan.review;

import static org.assertj.core.api.Assertions.assertThat;

import org.bondspan.usecase.Sites;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A conductor between a thing and itself carries no current anywhere: Kirchhoff. */
class LoopTest {
    private static final String SITE = Sites.openFloor(60, 40, """
            "services": [{"id": "S", "supply": "A", $copper(500 kcmil), $at(0, 0)}],
            "electrodes": [
              {"id": "W", $water, "use": "domestic"},
              {"id": "C", $footing, "connections": [{"id": "a", "at": [20, 0]}, {"id": "b", "at": [20, 9]}]},
              {"id": "R1", $rod, $at(40, 0)},
              {"id": "R2", $rod, $at(40, 8)}],
            "paths": [
              {"id": "P", "medium": "water-pipe", "electrode": "W", "line": [[60, 0], [50, 0]], "exposed": true,
                "breaks": [{"distance": 3, "kind": "meter", "jumper": 2, "installed": true}]},
              {"id": "F", "medium": "structural-frame", "grid": {"x": [0, 20], "y": [20, 40]}, "top": 10,
                "continuous": false}]""");

    private static Judged judged(String conductor) {
        return Judged.of(SITE, """
                A 1/0 AWG S > P@1
                B 4 AWG A~5 > C
                D 6 AWG A~9 > R1
                E 6 AWG R1 > R2
                """ + conductor);
    }

    @ParameterizedTest
    @ValueSource(strings = {"R1 > R1", "S > S", "C.a > C.b", "P@1 > P@2", "W > P@2", "(5,5) > (5.04,5)", "A~9 > A~9"})
    void aConductorWhoseEndsAreOneIsTold(String ends) {
        Judged judged = judged("Z 1/0 AWG " + ends);
        assertThat(judged.cautions()).contains("geometry Z");
        assertThat(judged.message("geometry")).contains("Z begins and ends at ", "its copper joins nothing");
    }

    /** Around a meter, from part to part of a frame in parts, or by another way: these join something. */
    @ParameterizedTest
    @ValueSource(strings = {"P@2 > P@4", "F > F", "R1 > R2", "A~5 > A~9", "(5,5) > (5.1,5)"})
    void aConductorBetweenTwoPlacesIsNone(String ends) {
        assertThat(judged("Z 1/0 AWG " + ends).cautions()).doesNotContain("geometry Z");
    }

    @Test
    void aLoopAtAJointIsTold() {
        assertThat(judged("Z 6 AWG J:J1 > J:J1\njoint J1 exothermic A Z").cautions())
                .contains("geometry Z");
    }
}
