package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;

class MeterTest {

    @Test
    void aSearchForWhichMemoryWasEstimatedTooLowEndsAsForWantOfMemory() {
        assertThatExceptionOfType(SpentException.class)
                .isThrownBy(() -> Meter.of(Limits.none()).run(MeterTest::takeAllMemory))
                .satisfies(spent -> assertThat(spent.what()).isEqualTo(SpentException.What.MEMORY));
    }

    /** More than an array may have: Java refuses at once, whatever the memory. */
    private static long takeAllMemory() {
        return new long[Integer.MAX_VALUE].length;
    }
}
