package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against every tree there is, on thousands of tiny problems. */
class BruteForceTest {

    static LongStream blocks() {
        return Seeds.blocks(40);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void findsTheLeastTreeForNeedsByPairs(long block) {
        Seeds.of(block).forEach(seed -> compare(seed, RandomSketch.withPairNeeds(seed)));
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void findsTheLeastTreeForSumsOfAreas(long block) {
        Seeds.of(block).forEach(seed -> compare(seed, RandomSketch.withSumsOfAreas(seed)));
    }

    /** Taps of up to twice what a short stretch weighs. */
    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void findsTheLeastTreeWhereTapsWeigh(long block) {
        Seeds.of(block).forEach(seed -> {
            compare(seed, RandomSketch.withPairNeeds(seed).withTapsOf(1 + seed % 9));
            compare(seed, RandomSketch.withSumsOfAreas(seed).withTapsOf(1 + seed % 9));
        });
    }

    /**
     * Without making nodes that lie together one beforehand: for needs by pairs this changes no weight and no length.
     */
    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void findsTheLeastWeightOverTreesThatMeetASpotTwice(long block) {
        Seeds.of(block).forEach(seed -> {
            Sketch sketch = RandomSketch.smallWithPairNeeds(seed);
            Optional<BruteForce.Value> expected = BruteForce.solve(sketch);
            Optional<BruteForce.Value> found = value(Solver.solve(sketch.problem()));
            assertThat(found.map(BruteForce.Value::weight))
                    .as("seed %d", seed)
                    .isEqualTo(expected.map(BruteForce.Value::weight));
            assertThat(found.map(BruteForce.Value::length))
                    .as("seed %d", seed)
                    .isEqualTo(expected.map(BruteForce.Value::length));
        });
    }

    private static void compare(long seed, Sketch sketch) {
        Optional<BruteForce.Value> expected = BruteForce.solve(sketch.withSpots());
        Outcome outcome = Solver.solve(sketch.problem());
        assertThat(value(outcome)).as("seed %d of %s", seed, sketch).isEqualTo(expected);
        if (outcome instanceof Outcome.Least least) {
            TreeAudit.check(sketch, least.tree());
        }
        assertThat(value(Solver.solve(sketch.problem(), Shortcuts.NONE)))
                .as("seed %d without shortcuts", seed)
                .isEqualTo(expected);
    }

    private static Optional<BruteForce.Value> value(Outcome outcome) {
        return outcome instanceof Outcome.Least least
                ? Optional.of(new BruteForce.Value(
                        least.tree().weight(),
                        least.tree().length(),
                        least.tree().taps()))
                : Optional.empty();
    }
}
