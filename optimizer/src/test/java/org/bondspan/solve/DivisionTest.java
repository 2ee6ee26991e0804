package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Problems that fall into parts: against every tree there is, against the search of the whole, and sums by hand. */
class DivisionTest {

    private static final Shortcuts DIVISION_ALONE = new Shortcuts(false, true, false, false);

    private static final long TIE = 70;

    static LongStream blocks() {
        return Seeds.blocks(40);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void theLeastOfAllTreesIsFound(long block) {
        Seeds.of(block).forEach(seed -> {
            long tap = seed % 3 == 0 ? 1 + seed % 7 : 0;
            compareWithAllTrees(
                    seed, RandomSketch.piecesWithPairNeeds(seed, 8, 5).withTapsOf(tap));
            compareWithAllTrees(
                    seed, RandomSketch.piecesWithSumsOfAreas(seed, 8, 5).withTapsOf(tap));
        });
    }

    private static void compareWithAllTrees(long seed, Sketch sketch) {
        Optional<Cost> least = BruteForce.solve(sketch.withSpots())
                .map(value -> Cost.of(value.weight(), value.length(), value.taps()));
        assertThat(cost(sketch, Shortcuts.ALL))
                .as("seed %d of %s", seed, sketch)
                .isEqualTo(least);
        assertThat(cost(sketch, DIVISION_ALONE))
                .as("seed %d of %s", seed, sketch)
                .isEqualTo(least);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void theWholeSearchedAtOnceSaysTheSame(long block) {
        Seeds.of(block).limit(50).forEach(seed -> {
            long tap = seed % 3 == 0 ? 1 + seed % 7 : 0;
            compareWithTheWhole(
                    seed, RandomSketch.piecesWithPairNeeds(seed, 24, 9).withTapsOf(tap));
            compareWithTheWhole(
                    seed, RandomSketch.piecesWithSumsOfAreas(seed, 20, 7).withTapsOf(tap));
        });
    }

    private static void compareWithTheWhole(long seed, Sketch sketch) {
        Optional<Cost> plain = cost(sketch, Shortcuts.NONE);
        assertThat(cost(sketch, Shortcuts.ALL))
                .as("seed %d of %s", seed, sketch)
                .isEqualTo(plain);
        assertThat(cost(sketch, DIVISION_ALONE))
                .as("seed %d of %s", seed, sketch)
                .isEqualTo(plain);
    }

    private static Optional<Cost> cost(Sketch sketch, Shortcuts shortcuts) {
        if (Solver.solve(sketch.problem(), shortcuts) instanceof Outcome.Least least) {
            TreeAudit.check(sketch, least.tree());
            return Optional.of(least.tree().cost());
        }
        return Optional.empty();
    }

    /** The cases above are of use only where there are parts, few leaves or many. */
    @Test
    void manyOfTheseCasesFallIntoParts() {
        assertThat(countDivided(seed -> RandomSketch.piecesWithPairNeeds(seed, 8, 5)))
                .isGreaterThan(200);
        assertThat(countDivided(seed -> RandomSketch.piecesWithSumsOfAreas(seed, 8, 5)))
                .isGreaterThan(200);
        assertThat(countDivided(seed -> RandomSketch.piecesWithPairNeeds(seed, 24, 9)))
                .isGreaterThan(200);
    }

    private static long countDivided(LongFunction<Sketch> sketches) {
        return LongStream.range(0, 1000)
                .filter(seed -> Cores.findCore(sketches.apply(seed))
                        .flatMap(Division::find)
                        .isPresent())
                .count();
    }

    /** Every arm is bought at what its leaf needs; one leaf after the first two is one more tap. */
    @ParameterizedTest
    @ValueSource(ints = {2, 18, 62, 63, 300})
    void aStarIsTheSumOfItsArms(int arms) {
        RoutingProblem.Builder builder = star(arms);
        int[][] need = new int[arms][arms];
        for (int t = 1; t < arms; t++) {
            need[0][t] = t % 4;
            need[t][0] = t % 4;
        }
        Outcome.Least least = (Outcome.Least) Solver.solve(builder.build(CutNeed.ofPairs(need)));
        long length = 10 + 2;
        long weight = (10 + 2) * price(arms > 3 ? 3 : arms - 1);
        for (int t = 1; t < arms; t++) {
            length += 10 + 3L * t + 2;
            weight += (10 + 3L * t + 2) * price(t % 4);
        }
        assertThat(least.tree().cost()).isEqualTo(Cost.of(weight, length, arms - 2));
    }

    private static long price(int rank) {
        return new long[] {5, 8, 13, 20}[rank];
    }

    /** Arms of 10, 13, 16 .. in two stretches, and landings of 2 each. */
    private static RoutingProblem.Builder star(int arms) {
        RoutingProblem.Builder builder = RoutingProblem.builder(4);
        int copper = builder.addTariff(price(0), price(1), price(2), price(3));
        int middle = builder.addPlace();
        for (int t = 0; t < arms; t++) {
            int halfway = builder.addPlace();
            int end = builder.addPlace();
            builder.addEdge(middle, halfway, 4 + t, copper);
            builder.addEdge(halfway, end, 6 + 2L * t, copper);
            builder.attach(builder.addTerminal(), end, 2, copper);
        }
        return builder;
    }

    /** Services of one supply add up, and there are too many leaves for a table of all sides. */
    @Test
    void aStarOfManyLeavesIsLeastWhereServicesAddUp() {
        int arms = 40;
        CutNeed sums = CutNeed.of(new int[arms][arms], side -> {
            int here = side.get(0, 3).cardinality();
            int ofOthersThere = side.nextClearBit(3) < arms ? here : 0;
            int ofOthersHere = side.get(3, arms).isEmpty() ? 0 : 3 - here;
            return Math.max(ofOthersThere, ofOthersHere);
        });
        Outcome.Least least = (Outcome.Least) Solver.solve(star(arms).build(sums));
        long weight = IntStream.range(0, arms)
                .mapToLong(t -> (10 + 3L * t + 2) * price(t < 3 ? 1 : 3))
                .sum();
        assertThat(least.tree().weight()).isEqualTo(weight);
    }

    /** Nearly a hundred leaves on eight floors; each is tied to the next at a landing of theirs. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aRowOfFloorsWeighsWhatItsFloorsWeigh(long seed) {
        List<Sketch> floors = floors(seed);
        checkRow(floors, inARow(floors));
    }

    /** So many leaves are not searched at once, and nothing parts them but the bound, which no long tie is within. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void aRowOfFloorsIsLeastWhereLongTiesMakeRingsOfIt(long seed) {
        List<Sketch> floors = floors(seed);
        Sketch row = inARow(floors);
        List<Sketch.Stretch> edges = new ArrayList<>(row.edges());
        int last = row.terminals().size() - 1;
        for (int t = 5; t < last; t += 6) {
            edges.add(new Sketch.Stretch(landing(row, t), landing(row, Math.min(t + 12, last)), 9000, 0));
        }
        Sketch rings = new Sketch(1, row.metal(), row.tariffs(), edges, row.terminals(), row.need());
        Core core = Cores.findCore(rings).orElseThrow();
        assertThat(Division.find(core).map(Division::cores).orElse(List.of(core)))
                .anyMatch(part -> part.leaves() > CoreNeed.MOST_IN_A_LONG);
        checkRow(floors, rings);
    }

    private static int landing(Sketch sketch, int terminal) {
        return sketch.terminals().get(terminal).get(0).node();
    }

    private static List<Sketch> floors(long seed) {
        return LongStream.iterate(100 * seed, floor -> floor + 1)
                .mapToObj(floor -> GridSketch.plain(floor, 8, 12, 1))
                .filter(floor -> weightOf(floor).isPresent())
                .limit(8)
                .toList();
    }

    private static void checkRow(List<Sketch> floors, Sketch row) {
        long weight =
                floors.stream().mapToLong(floor -> weightOf(floor).getAsLong()).sum();
        long perUnit = row.tariffs().get(0).get(0);
        Outcome outcome = Solver.solve(row.problem());
        assertThat(outcome).isInstanceOf(Outcome.Least.class);
        Tree tree = ((Outcome.Least) outcome).tree();
        TreeAudit.check(row, tree);
        assertThat(tree.weight()).isEqualTo(weight + (floors.size() - 1) * TIE * perUnit);
    }

    private static OptionalLong weightOf(Sketch sketch) {
        return Solver.solve(sketch.problem(), new Shortcuts(true, false, true, true)) instanceof Outcome.Least least
                ? OptionalLong.of(least.tree().weight())
                : OptionalLong.empty();
    }

    private static Sketch inARow(List<Sketch> floors) {
        List<Boolean> metal = new ArrayList<>();
        List<Sketch.Stretch> edges = new ArrayList<>();
        List<List<Sketch.Landing>> terminals = new ArrayList<>();
        for (Sketch floor : floors) {
            int first = metal.size();
            if (first > 0) {
                int last = terminals.get(terminals.size() - 1).get(0).node();
                edges.add(new Sketch.Stretch(last, first + landing(floor, 0), TIE, 0));
            }
            metal.addAll(floor.metal());
            floor.edges()
                    .forEach(edge -> edges.add(
                            new Sketch.Stretch(first + edge.a(), first + edge.b(), edge.length(), edge.tariff())));
            floor.terminals()
                    .forEach(ways -> terminals.add(ways.stream()
                            .map(way -> new Sketch.Landing(first + way.node(), way.length(), way.tariff()))
                            .toList()));
        }
        CutNeed need = CutNeed.ofPairs(new int[terminals.size()][terminals.size()]);
        return new Sketch(1, metal, floors.get(0).tariffs(), edges, terminals, need);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void withoutTimeOrMemoryTheBoundHoldsAllTheSame(long block) {
        Seeds.of(block).limit(20).forEach(seed -> {
            Sketch sketch = RandomSketch.piecesWithPairNeeds(seed, 24, 9);
            Optional<Cost> least = cost(sketch, Shortcuts.NONE);
            check(sketch, least, Limits.none().within(Duration.ofSeconds(-1)));
            check(sketch, least, Limits.none().withMemory(1));
        });
    }

    private static void check(Sketch sketch, Optional<Cost> least, Limits limits) {
        if (Solver.solve(sketch.problem(), limits) instanceof Outcome.BestFound best) {
            TreeAudit.check(sketch, best.tree());
            assertThat(best.tree().cost()).isGreaterThanOrEqualTo(least.orElseThrow());
            assertThat(best.lowerBoundWeight())
                    .isLessThanOrEqualTo(least.orElseThrow().weight());
        }
    }
}
