package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * FEATURE UNDER TEST: the measured length of a line replaces the drawn one, longer or shorter, shared in proportion; an
 * open floor joins such a line at its two ends only.
 */
class B04_MeasuredLinesTest {
    private static String site(int length, String rodAt) {
        return """
                "services": [{"id": "S", $copper(3/0 AWG), $at(0, 0)}],
                "electrodes": [{"id": "R", $rod, $at(%s)}],
                "paths": [{"id": "P", "medium": "copper", "line": [[0, 0], [10, 0], [10, 10]], "length": %d}]""".formatted(rodAt, length);
    }

    /** Drawn 20 ft. The rod at (10, 5) is at 15 of 20: three quarters of the length. */
    @ParameterizedTest
    @CsvSource({"30, 22.5", "20, 15", "10, 7.5"})
    void countInProportion(int length, String expected) {
        assertThat(Routed.of(Sites.linesOnly(20, 20, site(length, "10, 5"))).sizes())
                .isEqualTo("6 AWG " + expected);
    }

    /** On the open floor, 15 by the floor: longer lines are not used. */
    @ParameterizedTest
    @CsvSource({"30, 15", "10, 7.5"})
    void areUsedOnlyWhereShorter(int length, String expected) {
        assertThat(Routed.of(Sites.openFloor(20, 20, site(length, "10, 5"))).sizes())
                .isEqualTo("6 AWG " + expected);
    }

    /**
     * The rod at (12, 5) is 17 by the floor. Were the floor joined at (10, 5) of the line of 10, it would be 7.5 + 2;
     * by its far end it is 10 + 2 + 5 = 17.
     */
    @ParameterizedTest
    @CsvSource({"10, 17", "8, 15"})
    void joinTheFloorAtTheirEndsOnly(int length, String expected) {
        assertThat(Routed.of(Sites.openFloor(20, 20, site(length, "12, 5"))).sizes())
                .isEqualTo("6 AWG " + expected);
    }
}
