package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Against every way of giving each edge a rank or leaving it out: any network, tree or not, in which each pair of
 * terminals is linked by conductors of at least its need. Checks that looking at trees alone, and sizing them by cuts,
 * loses nothing.
 */
class SizedNetworkTest {

    static LongStream blocks() {
        return Long.getLong("seed") == null ? LongStream.range(0, 6) : LongStream.of(0);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void noNetworkIsLighterThanTheTree(long block) {
        Long only = Long.getLong("seed");
        (only == null ? LongStream.range(50 * block, 50 * block + 50) : LongStream.of(only)).forEach(seed -> {
            Sketch sketch = RandomSketch.smallWithPairNeeds(seed);
            if (Math.pow(sketch.ranks() + 1, sketch.edges().size()) <= 20_000) {
                Optional<Long> found = Solver.solve(sketch.problem()) instanceof Outcome.Least least
                        ? Optional.of(least.tree().weight())
                        : Optional.empty();
                assertThat(found).as("seed %d of %s", seed, sketch).isEqualTo(new Networks(sketch).leastWeight());
            }
        });
    }

    private static final class Networks {

        private final Sketch sketch;
        private final int[] rank;
        private final int[] landing;
        private long best = Long.MAX_VALUE;

        Networks(Sketch sketch) {
            this.sketch = sketch;
            rank = new int[sketch.edges().size()];
            landing = new int[sketch.terminals().size()];
        }

        Optional<Long> leastWeight() {
            land(0, 0);
            return best == Long.MAX_VALUE ? Optional.empty() : Optional.of(best);
        }

        private void land(int terminal, long weight) {
            if (terminal == landing.length) {
                size(0, weight);
                return;
            }
            List<Sketch.Landing> ways = sketch.terminals().get(terminal);
            for (int i = 0; i < ways.size(); i++) {
                int needed = 0;
                for (int other = 0; other < landing.length; other++) {
                    needed = other == terminal ? needed : Math.max(needed, pair(terminal, other));
                }
                int bought = sketch.bought(ways.get(i).tariff(), needed);
                if (bought >= 0) {
                    landing[terminal] = ways.get(i).node();
                    long perUnit = sketch.tariffs().get(ways.get(i).tariff()).get(bought);
                    land(terminal + 1, weight + perUnit * ways.get(i).length());
                }
            }
        }

        private int pair(int s, int t) {
            return ((PairNeed) sketch.need()).ofPair(s, t);
        }

        private void size(int edge, long weight) {
            if (weight >= best) {
                return;
            }
            if (edge == rank.length) {
                best = isEnough() ? weight : best;
                return;
            }
            rank[edge] = -1;
            size(edge + 1, weight);
            Sketch.Stretch stretch = sketch.edges().get(edge);
            for (int size = 0; size < sketch.ranks(); size++) {
                long perUnit = sketch.tariffs().get(stretch.tariff()).get(size);
                if (perUnit >= 0) {
                    rank[edge] = size;
                    size(edge + 1, weight + perUnit * stretch.length());
                }
            }
        }

        private boolean isEnough() {
            for (int s = 0; s < landing.length; s++) {
                for (int t = 0; t < s; t++) {
                    if (!isLinked(landing[s], landing[t], pair(s, t))) {
                        return false;
                    }
                }
            }
            return true;
        }

        private boolean isLinked(int from, int to, int needed) {
            boolean[] reached = new boolean[sketch.metal().size()];
            reached[from] = true;
            for (int pass = 0; pass < reached.length; pass++) {
                for (int e = 0; e < rank.length; e++) {
                    Sketch.Stretch edge = sketch.edges().get(e);
                    if (rank[e] >= needed && (reached[edge.a()] || reached[edge.b()])) {
                        reached[edge.a()] = true;
                        reached[edge.b()] = true;
                    }
                }
            }
            return reached[to];
        }
    }
}
