package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Floors large enough for the search in growing limits, against the search without bounds. */
class LargeFloorTest {

    static LongStream seeds() {
        return Seeds.upTo(16);
    }

    private static Sketch sketch(long seed) {
        return GridSketch.rich(seed, 28, 4 + (int) (seed % 3), 1 + (int) (seed % 4));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void boundsChangeNothing(long seed) {
        compare(sketch(seed));
    }

    /** Weights of a few units, so that steps between limits are of one unit. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void boundsChangeNothingForSmallNumbers(long seed) {
        Sketch sketch = sketch(seed);
        List<List<Long>> small = sketch.tariffs().stream()
                .map(tariff -> tariff.stream().map(w -> w < 0 ? w : w / 500).toList())
                .toList();
        List<Sketch.Stretch> shortened = sketch.edges().stream()
                .map(edge -> new Sketch.Stretch(edge.a(), edge.b(), edge.length() % 3, edge.tariff()))
                .toList();
        compare(new Sketch(sketch.ranks(), sketch.metal(), small, shortened, sketch.terminals(), sketch.need()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void boundsChangeNothingForNeedsBySides(long seed) {
        Sketch sketch = sketch(seed);
        int ranks = sketch.ranks();
        // Terminals 0 and 1 are services; apart they need little, together so much that two runs may be lighter than
        // one.
        CutNeed sums = CutNeed.of(side -> (side & 3) == 1 || (side & 3) == 2 ? 0 : ranks - 1);
        compare(new Sketch(ranks, sketch.metal(), sketch.tariffs(), sketch.edges(), sketch.terminals(), sums));
    }

    private static void compare(Sketch sketch) {
        Outcome found = Solver.solve(sketch.problem());
        Outcome plain = Solver.solve(sketch.problem(), new Shortcuts(true, false, false, false));
        assertThat(found.getClass()).isEqualTo(plain.getClass());
        if (found instanceof Outcome.Least least && plain instanceof Outcome.Least other) {
            TreeAudit.check(sketch, least.tree());
            assertThat(least.tree().cost()).isEqualTo(other.tree().cost());
        }
    }
}
