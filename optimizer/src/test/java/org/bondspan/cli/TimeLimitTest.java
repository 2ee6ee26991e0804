package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TimeLimitTest {
    @Test
    void enoughTimeChangesNothing() {
        String site = Run.sample("hall-steel");
        assertThat(Run.of("route", "--time-limit", "60", site).out())
                .isEqualTo(Run.of("route", site).out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1e99", "soon", ""})
    void aLimitIsANumberOfSeconds(String limit) {
        Run run = Run.of("route", "--time-limit", limit, Run.sample("hall-steel"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.err()).contains("--time-limit");
    }

    @Test
    void progressIsNotToldWhereNobodyWatches() {
        assertThat(Run.of("route", Run.sample("hall-steel")).err()).isEmpty();
    }

    @Test
    void aStopAnswersWithTheBestFound() {
        Run run = Run.watched(new Watch(false, () -> true), "route", Run.sample("hall-steel"));
        assertThat(run.exit()).isNotEqualTo(Exit.FAILED);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("lb");
    }
}
