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
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Random sites against a second way to the same number: every whole foot as a node, every subset of terminals in a
 * table.
 */
class RasterOracleTest {
    static LongStream blocks() {
        return Long.getLong("seed") == null ? LongStream.range(0, 10) : LongStream.of(0);
    }

    private static LongStream seeds(long block) {
        Long only = Long.getLong("seed");
        return only == null ? LongStream.range(50 * block, 50 * block + 50) : LongStream.of(only);
    }

    @ParameterizedTest(name = "block {0}")
    @MethodSource("blocks")
    void weighsWhatTheTableOfSubsetsSays(long block) {
        seeds(block).forEach(seed -> {
            String text = RandomSites.ofOneLevel(seed).sketch().write(Pen.PLAIN);
            Site site = SiteReader.parse(text, "seed-" + seed);
            OptionalLong expected = new SubsetTable(new Raster(site)).leastWeight();
            OptionalLong found = weight(RouteSite.of(site));
            if (mayTableUseARunTwice(site)) {
                assertThat(found.isPresent()).as("seed %d", seed).isEqualTo(expected.isPresent());
                assertThat(found.orElse(0)).as("seed %d: %s", seed, text).isGreaterThanOrEqualTo(expected.orElse(0));
            } else {
                assertThat(found).as("seed %d: %s", seed, text).isEqualTo(expected);
            }
        });
    }

    /**
     * Two services of one lateral and a run that is free up to a size: the table leads either service along it by
     * itself, where together they would be too much for it. Its weight is then a lower bound.
     */
    private static boolean mayTableUseARunTwice(Site site) {
        boolean oneLateral = site.services().size() > supplies(site);
        boolean limited = !site.listPaths(InstalledConductor.class).isEmpty()
                || site.listPaths(RingPath.class).stream().anyMatch(RingPath::mayInterconnect);
        return oneLateral && limited;
    }

    private static long supplies(Site site) {
        return site.services().stream().map(Service::supply).distinct().count();
    }

    static LongStream seedsOfProgram() {
        return Long.getLong("seed") == null ? LongStream.range(0, 60) : LongStream.of(Long.getLong("seed", 0));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seedsOfProgram")
    void weighsWhatTheIntegerProgramSays(long seed) {
        assumeTrue(hasLibrary(), "no native OR-Tools library for this machine");
        String text = RandomSites.ofOneLevel(seed, 8).sketch().write(Pen.PLAIN);
        Site site = SiteReader.parse(text, "seed-" + seed);
        if (site.services().size() == supplies(site)) {
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
