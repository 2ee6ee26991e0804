package org.bondspan.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPSolver;
import java.math.BigInteger;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.bondspan.io.SiteReader;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Layout;
import org.bondspan.site.Site;
import org.bondspan.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random sites against a second way to the same number: every whole foot as a node, every subset of terminals in a
 * table.
 */
class RasterOracleTest {
    static LongStream blocks() {
        return SeedBlocks.upTo(10);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void weighsWhatTheTableOfSubsetsSays(long block) {
        SeedBlocks.seeds(block).forEach(seed -> {
            String text = RandomSites.ofOneLevel(seed).sketch().write(Pen.PLAIN);
            Site site = SiteReader.parse(text, "seed-" + seed);
            OptionalLong expected = new SubsetTable(new Raster(site)).leastWeight();
            OptionalLong found = weight(RouteSite.of(site));
            assertThat(found.isPresent()).as("seed %d", seed).isEqualTo(expected.isPresent());
            assertThat(found.orElse(0)).as("seed %d: %s", seed, text).isGreaterThanOrEqualTo(expected.orElse(0));
            // Where one lateral feeds two services the table may lead both along a run one by one, or pass a place
            // twice, where together they need more: then it is a lower bound only.
            if (!new Book(site).isOfOneLateral()) {
                assertThat(found).as("seed %d: %s", seed, text).isEqualTo(expected);
            }
        });
    }

    static LongStream seedsOfProgram() {
        return Long.getLong("seed") == null ? LongStream.range(0, 40) : LongStream.of(Long.getLong("seed", 0));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsOfProgram")
    void weighsWhatTheIntegerProgramSays(long seed) {
        compareWithProgram(seed, 8, false);
    }

    /** Smaller sites: the program for sums of areas is a harder one. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsOfProgram")
    void weighsWhatTheIntegerProgramSaysForTwoServicesOfOneLateral(long seed) {
        compareWithProgram(seed, 6, true);
    }

    private static void compareWithProgram(long seed, int most, boolean ofOneLateral) {
        assumeTrue(hasLibrary(), "no native OR-Tools library for this machine");
        String text = RandomSites.ofOneLevel(seed, most).sketch().write(Pen.PLAIN);
        Site site = SiteReader.parse(text, "seed-" + seed);
        if (new Book(site).isOfOneLateral() == ofOneLateral) {
            MPSolver solver = MPSolver.createSolver("HIGHS");
            solver.suppressOutput();
            assertThat(weight(RouteSite.of(site)))
                    .as("seed %d: %s", seed, text)
                    .isEqualTo(new FlowProgram(new Raster(site), site.services().size(), solver).leastWeight());
        }
    }

    private static boolean hasLibrary() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (UnsatisfiedLinkError | RuntimeException missing) {
            return false;
        }
    }

    /** Tenths of a pound per 1000 ft times feet, exact. */
    static OptionalLong weight(Layout layout) {
        return layout.copper().map(Copper::weight).stream()
                .mapToLong(weight -> weight.grains()
                        .divide(BigInteger.valueOf(LengthUnit.FOOT.nanometres()))
                        .longValueExact())
                .findFirst();
    }
}
