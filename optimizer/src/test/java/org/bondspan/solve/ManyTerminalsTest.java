package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The method for many terminals: forced on few, where the exact search tells the truth, and on many. */
class ManyTerminalsTest {

    static LongStream seeds() {
        return Seeds.upTo(40);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("seeds")
    void neverBelowTheLeastNorTheBoundAboveItForNeedsByPairs(long block) {
        Seeds.of(block).forEach(seed -> compare(seed, RandomSketch.withPairNeeds(seed)));
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("seeds")
    void neverBelowTheLeastNorTheBoundAboveItForSumsOfAreas(long block) {
        Seeds.of(block).forEach(seed -> compare(seed, RandomSketch.withSumsOfAreas(seed)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverBelowTheLeastNorTheBoundAboveItOnFloors(long seed) {
        compare(seed, GridSketch.rich(seed, 12 + (int) (seed % 8), 4 + (int) (seed % 6), 1 + (int) (seed % 5)));
    }

    private static void compare(long seed, Sketch sketch) {
        Optional<Core> core = Cores.findCore(sketch);
        if (core.isEmpty()) {
            return;
        }
        compareTheProof(seed, sketch, core.orElseThrow());
        CoreAnswer rough = new CoreSolver(core.orElseThrow(), Shortcuts.ALL, Meter.of(Limits.none())).solveRoughly();
        if (Solver.solve(sketch.problem()) instanceof Outcome.Least least) {
            rough.tree()
                    .ifPresent(tree -> assertThat(tree.cost())
                            .as("seed %d", seed)
                            .isGreaterThanOrEqualTo(least.tree().cost()));
            assertThat(rough.lowerBound())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(least.tree().weight());
        } else {
            assertThat(rough.tree()).as("seed %d", seed).isEmpty();
        }
    }

    /** With a good tree and a good bound, in what they leave over, part by part. */
    private static void compareTheProof(long seed, Sketch sketch, Core core) {
        CoreAnswer answer = new CoreSolver(core, Shortcuts.ALL, Meter.of(Limits.none())).solvePrepared();
        assertThat(answer.ending()).isEmpty();
        Optional<Cost> plain = Solver.solve(sketch.problem(), Shortcuts.NONE) instanceof Outcome.Least least
                ? Optional.of(least.tree().cost())
                : Optional.empty();
        assertThat(answer.tree().map(CoreTree::cost)).as("seed %d", seed).isEqualTo(plain);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("seeds")
    void neverBelowTheLeastNorTheBoundAboveItWherePartsMeet(long block) {
        Seeds.of(block).forEach(seed -> compare(seed, RandomSketch.piecesWithPairNeeds(seed, 16, 8)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void twoTreesMergedAreNoHeavierThanEither(long seed) {
        Cores.findCore(GridSketch.rich(seed, 12 + (int) (seed % 8), 4 + (int) (seed % 9), 1 + (int) (seed % 5)))
                .ifPresent(core -> {
                    Meter meter = Meter.of(Limits.none());
                    FirstTree first = new FirstTree(core);
                    for (CoreTree one : first.trees(0)) {
                        for (CoreTree other : first.trees(core.leaves() - 1)) {
                            Cost merged = new Merger(core, meter)
                                    .merge(one, other)
                                    .orElseThrow()
                                    .cost();
                            assertThat(merged).isLessThanOrEqualTo(one.cost()).isLessThanOrEqualTo(other.cost());
                        }
                    }
                });
    }

    /** How good it is, on floors: most are solved to the least weight, and none is far from it. */
    @Test
    void findsTheLeastWeightOnMostFloors() {
        long least = 0;
        for (long seed = 0; seed < 40; seed++) {
            Sketch sketch = GridSketch.plain(seed, 20, 9, 1 + (int) (seed % 5));
            if (Solver.solve(sketch.problem()) instanceof Outcome.Least exact) {
                Core core = Cores.findCore(sketch).orElseThrow();
                long weight = new CoreSolver(core, Shortcuts.ALL, Meter.of(Limits.none()))
                        .solveRoughly()
                        .tree()
                        .orElseThrow()
                        .cost()
                        .weight();
                assertThat(weight * 100).isLessThan(103 * exact.tree().weight());
                least += weight == exact.tree().weight() ? 1 : 0;
            } else {
                least++;
            }
        }
        assertThat(least).isGreaterThanOrEqualTo(36);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("few")
    void aHundredTerminalsGetATreeAndABoundAndAlwaysTheSame(long seed) {
        Sketch sketch = GridSketch.plain(seed, 30, 100, 4);
        Outcome outcome = Solver.solve(sketch.problem());
        if (outcome instanceof Outcome.BestFound best) {
            TreeAudit.check(sketch, best.tree());
            assertThat(best.why()).isEqualTo(Outcome.Ending.TERMINALS);
            assertThat(best.lowerBoundWeight()).isLessThanOrEqualTo(best.tree().weight());
            assertThat(best.tree().weight() * 100).isLessThan(108 * best.lowerBoundWeight());
            assertThat(Solver.solve(sketch.problem())).hasToString(outcome.toString());
        } else {
            assertThat(outcome).isInstanceOf(Outcome.Impossible.class);
        }
    }

    static LongStream few() {
        return Seeds.upTo(4);
    }

    /** The same needs, as sums of one: no table of sides is possible. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("few")
    void manyTerminalsWithNeedsBySides(long seed) {
        Sketch sketch = GridSketch.plain(seed, 24, 70, 3);
        CutNeed sides = CutNeed.of(new int[70][70], sketch.need()::rank);
        Sketch bySides =
                new Sketch(sketch.ranks(), sketch.metal(), sketch.tariffs(), sketch.edges(), sketch.terminals(), sides);
        Outcome outcome = Solver.solve(bySides.problem());
        if (outcome instanceof Outcome.BestFound best) {
            TreeAudit.check(bySides, best.tree());
            assertThat(best.lowerBoundWeight())
                    .isPositive()
                    .isLessThanOrEqualTo(best.tree().weight());
        } else {
            assertThat(outcome).isInstanceOf(Outcome.Impossible.class);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aDeadlineInThePastStillGivesATreeAndABound(long seed) {
        Sketch sketch = GridSketch.rich(seed, 25, 6 + (int) (seed % 6), 3);
        check(
                sketch,
                Solver.solve(sketch.problem(), Limits.none().within(Duration.ofSeconds(-1))),
                Outcome.Ending.TIME);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void withoutMemoryForTablesThereIsATreeAndABound(long seed) {
        Sketch sketch = GridSketch.rich(seed, 25, 6 + (int) (seed % 6), 3);
        check(sketch, Solver.solve(sketch.problem(), Limits.none().withMemory(1)), Outcome.Ending.MEMORY);
    }

    /** What ends at once is least all the same, when the bound happens to prove it. */
    private static void check(Sketch sketch, Outcome limited, Outcome.Ending why) {
        Outcome exact = Solver.solve(sketch.problem());
        if (limited instanceof Outcome.BestFound best && exact instanceof Outcome.Least least) {
            TreeAudit.check(sketch, best.tree());
            assertThat(best.why()).isEqualTo(why);
            assertThat(best.tree().cost()).isGreaterThanOrEqualTo(least.tree().cost());
            assertThat(best.lowerBoundWeight())
                    .isPositive()
                    .isLessThanOrEqualTo(least.tree().weight());
        } else if (!(limited instanceof Outcome.NotFound)) {
            assertThat(limited).hasToString(exact.toString());
        }
    }

    /** Without a deadline the same problem ends by itself; with one only the stop ends it. */
    @Test
    void timeUntilADeadlineIsUsed() {
        Sketch sketch = GridSketch.plain(3, 24, 70, 2);
        AtomicLong untimed = new AtomicLong();
        Outcome.BestFound first = (Outcome.BestFound)
                Solver.solve(sketch.problem(), Limits.none().until(() -> untimed.incrementAndGet() < 0));
        AtomicLong asked = new AtomicLong();
        Limits limits =
                Limits.none().within(Duration.ofHours(1)).until(() -> asked.incrementAndGet() > 2 * untimed.get());
        Outcome.BestFound later = (Outcome.BestFound) Solver.solve(sketch.problem(), limits);
        assertThat(asked.get()).isGreaterThan(2 * untimed.get());
        TreeAudit.check(sketch, later.tree());
        assertThat(later.tree().cost()).isLessThanOrEqualTo(first.tree().cost());
        assertThat(later.lowerBoundWeight()).isGreaterThanOrEqualTo(first.lowerBoundWeight());
    }

    @Test
    void aStopEndsTheSearchAndProgressIsTold() {
        Sketch sketch = GridSketch.plain(3, 40, 60, 4);
        List<long[]> told = new ArrayList<>();
        Limits limits = Limits.none()
                .until(() -> told.size() >= 5)
                .telling((bestWeight, lowerBound) -> told.add(new long[] {bestWeight, lowerBound}));
        Outcome.BestFound best = (Outcome.BestFound) Solver.solve(sketch.problem(), limits);
        TreeAudit.check(sketch, best.tree());
        assertThat(told).hasSizeGreaterThanOrEqualTo(5);
        assertThat(told.get(told.size() - 1)[0])
                .isGreaterThanOrEqualTo(best.tree().weight());
        for (int i = 1; i < told.size(); i++) {
            assertThat(told.get(i)[0]).isLessThanOrEqualTo(told.get(i - 1)[0]);
            assertThat(told.get(i)[1]).isGreaterThanOrEqualTo(told.get(i - 1)[1]);
        }
    }
}
