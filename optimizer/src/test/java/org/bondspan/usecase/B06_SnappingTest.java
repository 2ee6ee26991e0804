package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** FEATURE UNDER TEST: a place within 0.05 ft in x and in y of one earlier in the file is that place. */
class B06_SnappingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"10, 5 | 15", "10.05, 5.05 | 15", "9.95, 4.95 | 15", "10.06, 5 | 15.06", "10, 5.06 | 15.06"})
    void takesANearPlaceForTheEarlierOne(String secondRod, String expected) {
        Routed routed = Routed.of(Sites.openFloor(20, 20, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(0, 0)}],
                "electrodes": [{"id": "R0", $rod, $at(10, 5)}, {"id": "R1", $rod, $at(%s)}]""".formatted(secondRod)));
        assertThat(routed.sizes()).isEqualTo("6 AWG " + expected);
    }

    /** Drawn a twentieth of a foot apart, the line still begins at the service and ends at the rod. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"[[0.05, 0], [19.95, 0.05]] | 6 AWG 20", "[[0.06, 0], [20, 0]] | "})
    void closesGapsBetweenLinesAndWhatTheyLeadTo(String line, String expected) {
        Routed routed = Routed.of(Sites.linesOnly(20, 20, """
                "services": [{"id": "S", $copper(3/0 AWG), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(20, 0)}],
                "paths": [{"id": "P", "medium": "copper", "line": %s}]""".formatted(line)));
        assertThat(routed.sizes()).isEqualTo(expected == null ? "" : expected);
    }
}
