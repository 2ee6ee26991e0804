package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold between the answers to two problems, on floors too large for trying everything. */
class SolverLawsTest {

    static LongStream seeds() {
        return Seeds.upTo(60);
    }

    private static Sketch sketch(long seed) {
        int terminals = 3 + (int) (seed % 5);
        return GridSketch.rich(seed, 5 + (int) (seed % 8), terminals, 1 + (int) (seed / 5 % 4));
    }

    private static Optional<Cost> cost(Sketch sketch) {
        return cost(sketch, Shortcuts.ALL);
    }

    private static Optional<Cost> cost(Sketch sketch, Shortcuts shortcuts) {
        if (Solver.solve(sketch.problem(), shortcuts) instanceof Outcome.Least least) {
            TreeAudit.check(sketch, least.tree());
            return Optional.of(least.tree().cost());
        }
        return Optional.empty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noShortcutChangesTheAnswer(long seed) {
        Sketch sketch = sketch(seed);
        Optional<Cost> plain = cost(sketch, Shortcuts.NONE);
        assertThat(cost(sketch, new Shortcuts(true, false, false, false))).isEqualTo(plain);
        assertThat(cost(sketch, new Shortcuts(false, true, false, false))).isEqualTo(plain);
        assertThat(cost(sketch, new Shortcuts(false, false, true, false))).isEqualTo(plain);
        assertThat(cost(sketch, new Shortcuts(false, false, false, true))).isEqualTo(plain);
        assertThat(cost(sketch)).isEqualTo(plain);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noShortcutChangesTheAnswerWhereTapsWeigh(long seed) {
        Sketch sketch = sketch(seed).withTapsOf(1 + seed % 7 * 20);
        Optional<Cost> plain = cost(sketch, Shortcuts.NONE);
        assertThat(cost(sketch, new Shortcuts(false, true, false, false))).isEqualTo(plain);
        assertThat(cost(sketch, new Shortcuts(false, false, true, false))).isEqualTo(plain);
        assertThat(cost(sketch, new Shortcuts(false, false, false, true))).isEqualTo(plain);
        assertThat(cost(sketch)).isEqualTo(plain);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void heavierTapsNeverMakeMoreOfThem(long seed) {
        Optional<Cost> light = cost(sketch(seed).withTapsOf(1));
        Optional<Cost> heavy = cost(sketch(seed).withTapsOf(100));
        assertThat(heavy.isPresent()).isEqualTo(light.isPresent());
        heavy.ifPresent(cost ->
                assertThat(cost.taps()).isLessThanOrEqualTo(light.orElseThrow().taps()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void needsByPairsAndTheSameNeedsBySidesAgree(long seed) {
        Sketch sketch = sketch(seed);
        Sketch bySides = withNeed(sketch, CutNeed.of(sketch.need()::rank));
        assertThat(cost(bySides)).isEqualTo(cost(sketch));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void tenfoldTariffsMakeTenfoldWeight(long seed) {
        Sketch sketch = sketch(seed);
        List<List<Long>> tenfold = sketch.tariffs().stream()
                .map(tariff -> tariff.stream().map(w -> w < 0 ? w : 10 * w).toList())
                .toList();
        Sketch scaled =
                new Sketch(sketch.ranks(), sketch.metal(), tenfold, sketch.edges(), sketch.terminals(), sketch.need());
        assertThat(cost(scaled)).isEqualTo(cost(sketch).map(cost -> new Cost(10 * cost.weight(), cost.extent())));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anotherEdgeNeverRaisesTheWeight(long seed) {
        Sketch sketch = sketch(seed);
        Random random = new Random(seed);
        List<Sketch.Stretch> more = new ArrayList<>(sketch.edges());
        for (int i = 0; i < 3; i++) {
            int nodes = sketch.metal().size();
            more.add(new Sketch.Stretch(random.nextInt(nodes), random.nextInt(nodes), random.nextInt(50), 0));
        }
        Sketch richer =
                new Sketch(sketch.ranks(), sketch.metal(), sketch.tariffs(), more, sketch.terminals(), sketch.need());
        assertThat(weight(richer)).isLessThanOrEqualTo(weight(sketch));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aLargerNeedNeverLowersTheWeight(long seed) {
        Sketch sketch = sketch(seed);
        int terminals = sketch.terminals().size();
        int[][] larger = pairs(sketch);
        int raised = (int) (seed % terminals);
        int other = (raised + 1) % terminals;
        larger[raised][other] = sketch.ranks() - 1;
        larger[other][raised] = sketch.ranks() - 1;
        assertThat(weight(withNeed(sketch, CutNeed.ofPairs(larger)))).isGreaterThanOrEqualTo(weight(sketch));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void newNumbersForNodesEdgesAndTerminalsChangeNothing(long seed) {
        Sketch sketch = sketch(seed);
        Random random = new Random(seed);
        List<Integer> node = shuffled(sketch.metal().size(), random);
        List<Boolean> metal = new ArrayList<>(sketch.metal());
        IntStream.range(0, node.size())
                .forEach(v -> metal.set(node.get(v), sketch.metal().get(v)));
        List<Sketch.Stretch> edges = new ArrayList<>();
        sketch.edges()
                .forEach(edge -> edges.add(
                        new Sketch.Stretch(node.get(edge.b()), node.get(edge.a()), edge.length(), edge.tariff())));
        Collections.shuffle(edges, random);
        List<Integer> terminal = shuffled(sketch.terminals().size(), random);
        List<List<Sketch.Landing>> terminals = new ArrayList<>();
        int[][] need = new int[terminal.size()][terminal.size()];
        for (int t = 0; t < need.length; t++) {
            terminals.add(sketch.terminals().get(terminal.get(t)).stream()
                    .map(way -> new Sketch.Landing(node.get(way.node()), way.length(), way.tariff()))
                    .toList());
            for (int s = 0; s < need.length; s++) {
                need[s][t] = pairs(sketch)[terminal.get(s)][terminal.get(t)];
            }
        }
        Sketch renumbered =
                new Sketch(sketch.ranks(), metal, sketch.tariffs(), edges, terminals, CutNeed.ofPairs(need));
        assertThat(cost(renumbered)).isEqualTo(cost(sketch));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSameProblemGivesTheSameTree(long seed) {
        Sketch sketch = sketch(seed);
        assertThat(Solver.solve(sketch.problem()))
                .hasToString(Solver.solve(sketch.problem()).toString());
    }

    private static long weight(Sketch sketch) {
        return cost(sketch).map(Cost::weight).orElse(Long.MAX_VALUE);
    }

    private static int[][] pairs(Sketch sketch) {
        int terminals = sketch.terminals().size();
        int[][] need = new int[terminals][terminals];
        for (int s = 0; s < terminals; s++) {
            for (int t = 0; t < terminals; t++) {
                need[s][t] = ((PairNeed) sketch.need()).ofPair(s, t);
            }
        }
        return need;
    }

    private static Sketch withNeed(Sketch sketch, CutNeed need) {
        return new Sketch(sketch.ranks(), sketch.metal(), sketch.tariffs(), sketch.edges(), sketch.terminals(), need);
    }

    private static List<Integer> shuffled(int count, Random random) {
        List<Integer> numbers =
                new ArrayList<>(IntStream.range(0, count).boxed().toList());
        Collections.shuffle(numbers, random);
        return numbers;
    }
}
