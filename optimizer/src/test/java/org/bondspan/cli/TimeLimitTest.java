package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
    @ValueSource(strings = {"1000000000", "999999999.5", "60.0000000001", "0060"})
    void anySensibleLimitIsTaken(String limit) {
        Run run = Run.of("route", "--time-limit", limit, Run.sample("hall-steel"));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("Least copper, proven:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.0", "-1", "1e6", "1e99", "soon", "", "1000000000.1", "9999999999999"})
    void aLimitIsANumberOfSeconds(String limit) {
        String site = Run.sample("hall-steel");
        assertThat(List.of(
                        Run.of("route", "--time-limit", limit, site),
                        Run.of("takeoff", "--time-limit", limit, site),
                        Run.of("review", "--time-limit", limit, site, site)))
                .allSatisfy(run -> {
                    assertThat(run.exit()).isEqualTo(2);
                    assertThat(run.out()).isEmpty();
                    assertThat(run.err().lines()).hasSize(1);
                    assertThat(run.err())
                            .contains(
                                    "--time-limit " + limit + ":",
                                    "plain decimal number",
                                    "more than 0 and at most 1000000000");
                });
    }

    @Test
    void progressIsNotToldWhereNobodyWatches() {
        assertThat(Run.of("route", Run.sample("hall-steel")).err()).isEmpty();
    }

    /** Proven least where the search is left to end, see {@link SamplesTest}. */
    @Test
    void aStopTakesOffTheBestRouteFound() {
        Run run = Run.watched(new Watch(false, () -> true), "takeoff", Run.sample("plant-block"));
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("the best route found");
    }

    @Test
    void aStopAnswersWithTheBestFound() {
        Run run = Run.watched(new Watch(false, () -> true), "route", Run.sample("hall-steel"));
        assertThat(run.exit()).isNotEqualTo(Exit.FAILED);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("lb");
    }
}
