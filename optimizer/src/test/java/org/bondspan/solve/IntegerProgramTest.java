package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPSolver;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against an integer program solved by HiGHS (or SCIP) through OR-Tools, on small floors with several sizes. */
class IntegerProgramTest {

    @BeforeAll
    static void loadTheLibrary() {
        assumeTrue(isLoaded(), "no native OR-Tools library for this machine");
    }

    private static boolean isLoaded() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (UnsatisfiedLinkError | RuntimeException missing) {
            return false;
        }
    }

    static LongStream seeds() {
        return Seeds.upTo(40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void weighsWhatTheIntegerProgramSays(long seed) {
        Sketch sketch = GridSketch.rich(seed, 4 + (int) (seed % 6), 3 + (int) (seed % 5), 1 + (int) (seed / 4 % 4));
        OptionalLong found = Solver.solve(sketch.problem()) instanceof Outcome.Least least
                ? OptionalLong.of(least.tree().weight())
                : OptionalLong.empty();
        assertThat(found).isEqualTo(new IntegerProgram(sketch, solver()).leastWeight());
    }

    private static MPSolver solver() {
        @Nullable MPSolver highs = MPSolver.createSolver("HIGHS");
        MPSolver solver = highs == null ? MPSolver.createSolver("SCIP") : highs;
        solver.suppressOutput();
        solver.setTimeLimit(60_000);
        return solver;
    }
}
