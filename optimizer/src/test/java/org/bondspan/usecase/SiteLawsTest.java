package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every site, on random ones of one level and of two. */
class SiteLawsTest {
    private static final long UNREACHED = Long.MAX_VALUE;

    static LongStream blocks() {
        return SeedBlocks.upTo(12);
    }

    private static RandomSites draw(long seed) {
        return seed % 2 == 0 ? RandomSites.ofOneLevel(seed) : RandomSites.ofTwoLevels(seed);
    }

    private static Layout route(RandomSites drawn, Pen pen) {
        return RouteSite.of(SiteReader.parse(drawn.sketch().write(pen), "law"));
    }

    private static long weight(RandomSites drawn, Pen pen) {
        return RasterOracleTest.weight(route(drawn, pen)).orElse(UNREACHED);
    }

    private static long changed(long seed, UnaryOperator<RandomSites> change) {
        return weight(change.apply(draw(seed)), Pen.PLAIN);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void everyAnswerIsLawful(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            String text = draw(seed).sketch().write(Pen.PLAIN);
            Site site = SiteReader.parse(text, "law");
            Layout layout = RouteSite.of(site);
            if (layout.status() != Status.IMPOSSIBLE) {
                assertThat(layout)
                        .as("seed %d: %s", seed, text)
                        .satisfies(answer -> new TieGraph(site, answer).assertLawful())
                        .satisfies(answer -> new RunCheck(site, answer).assertLawful());
            }
        });
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void movingTurningAndMetresChangeNothing(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            long weight = weight(draw(seed), Pen.PLAIN);
            for (Pen pen : List.of(Pen.MOVED, Pen.MIRRORED_IN_X, Pen.MIRRORED_IN_Y, Pen.SWAPPED, Pen.IN_METRES)) {
                assertThat(weight(draw(seed), pen))
                        .as("seed %d with %s", seed, pen)
                        .isEqualTo(weight);
            }
        });
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void oneMoreLineNeverRaisesTheWeight(long block) {
        SeedBlocks.seeds(block)
                .forEach(seed -> assertThat(changed(seed, RandomSites::withOneMoreLine))
                        .as("seed %d", seed)
                        .isLessThanOrEqualTo(weight(draw(seed), Pen.PLAIN)));
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void largerServicesNeverLowerTheWeight(long block) {
        SeedBlocks.seeds(block)
                .forEach(seed -> assertThat(changed(seed, RandomSites::withLargerServices))
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(weight(draw(seed), Pen.PLAIN)));
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void aFrameThatMayNotCarryNeverLowersTheWeight(long block) {
        SeedBlocks.seeds(block)
                .forEach(seed -> assertThat(changed(seed, RandomSites::withFrameThatMayNotCarry))
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(weight(draw(seed), Pen.PLAIN)));
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void metalThatNeverCarriesChangesNothing(long block) {
        SeedBlocks.seeds(block)
                .forEach(seed -> assertThat(changed(seed, RandomSites::withMetalThatNeverCarries))
                        .as("seed %d", seed)
                        .isEqualTo(weight(draw(seed), Pen.PLAIN)));
    }
}
