package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans as large as buildings are, in steps as fine as nanometres. */
class FineUnitsTest {

    /** 0.01 ft is 3,048,000 nm: international foot of 1959, 0.3048 m. */
    private static final long NANOMETRES = 3_048_000;

    static LongStream seeds() {
        return Seeds.upTo(12);
    }

    /** 20,000 nodes over 1,300 ft: a grid of 141 lines each way at 0.6 to 60 ft, and its copy in nanometres. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSiteInNanometresHasTheAnswerOfTheSameSiteInHundredthsOfAFoot(long seed) {
        Sketch coarse = seed % 2 == 0 ? GridSketch.plain(seed, 141, 8, 5) : GridSketch.rich(seed, 60, 7, 5);
        Sketch fine = stretched(coarse, 16 * NANOMETRES);
        Outcome expected = Solver.solve(coarse.problem());
        Outcome found = Solver.solve(fine.problem());
        assertThat(found.getClass()).isEqualTo(expected.getClass());
        if (found instanceof Outcome.Least least && expected instanceof Outcome.Least other) {
            TreeAudit.check(fine, least.tree());
            assertThat(least.tree().weight())
                    .isEqualTo(16 * NANOMETRES * other.tree().weight());
            assertThat(least.tree().length())
                    .isEqualTo(16 * NANOMETRES * other.tree().length());
            assertThat(least.tree().taps()).isEqualTo(other.tree().taps());
        }
    }

    /**
     * 2,000 ft both ways, 3/0 copper of 518.1 lb per 1000 ft (ASTM B8), 100 terminals: the longest way weighs about
     * 6e15, everything together 6e18.
     */
    @Test
    void aLargeBuildingWithManyTerminalsIsNotRefused() {
        assertThat(comb(609_600_000_000L, 100).nodeCount()).isGreaterThan(100_000);
    }

    @Test
    void waysThatCouldOverflowAreRefused() {
        assertThatThrownBy(() -> comb(6_096_000_000_000L, 100))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("too large");
    }

    /** A grid of 320 lines each way over a square of this side. */
    private static RoutingProblem comb(long side, int terminals) {
        int lines = 320;
        RoutingProblem.Builder builder = RoutingProblem.builder(2);
        int copper = builder.addTariff(810, 5181);
        int ring = builder.addTariff(0, RoutingProblem.FORBIDDEN);
        int first = builder.addPlaces(lines * lines);
        for (int i = 0; i < lines; i++) {
            for (int j = 0; j < lines; j++) {
                if (i + 1 < lines) {
                    builder.addEdge(first + i * lines + j, first + (i + 1) * lines + j, side / lines - i, copper);
                }
                if (j + 1 < lines) {
                    builder.addEdge(first + i * lines + j, first + i * lines + j + 1, side / lines + j, copper);
                }
            }
        }
        builder.addEdge(first, first + lines * lines - 1, side, ring);
        for (int t = 0; t < terminals; t++) {
            builder.attach(builder.addTerminal(), first + 1000 * t, 914_400_000, copper);
        }
        return builder.build(CutNeed.ofPairs(new int[terminals][terminals]));
    }

    private static Sketch stretched(Sketch sketch, long times) {
        List<Sketch.Stretch> edges = sketch.edges().stream()
                .map(edge -> new Sketch.Stretch(edge.a(), edge.b(), times * edge.length(), edge.tariff()))
                .toList();
        List<List<Sketch.Landing>> terminals = new ArrayList<>();
        sketch.terminals()
                .forEach(ways -> terminals.add(ways.stream()
                        .map(way -> new Sketch.Landing(way.node(), times * way.length(), way.tariff()))
                        .toList()));
        return new Sketch(sketch.ranks(), sketch.metal(), sketch.tariffs(), edges, terminals, sketch.need());
    }
}
