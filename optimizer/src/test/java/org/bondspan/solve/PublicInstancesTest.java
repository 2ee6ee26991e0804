package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/** Public Steiner tree instances with their published optima; see {@link PublicInstances}. */
class PublicInstancesTest {

    /** Grid graphs with holes, of which any with up to 20 terminals is solved; of the others those with up to 12. */
    private static final List<String> GRIDS = List.of("lin", "msm", "diw", "dmxa", "gap", "taq", "alue", "alut");

    private static Stream<PublicInstances.Instance> instances() {
        Optional<Path> folder = PublicInstances.findFolder();
        assumeTrue(folder.isPresent(), "no folder with public instances; give one by -Dbenchmarks=...");
        return PublicInstances.list(folder.orElseThrow()).stream();
    }

    private static String set(PublicInstances.Instance instance) {
        return instance.file().getName(instance.file().getNameCount() - 2).toString();
    }

    @Test
    void findsThePublishedOptima() {
        SoftAssertions softly = new SoftAssertions();
        long solved = instances()
                .filter(instance -> !set(instance).startsWith("wrp"))
                .filter(instance -> instance.terminals() <= (GRIDS.contains(set(instance)) ? 20 : 12))
                .peek(instance -> softly.assertThat(weight(PublicInstances.read(instance)))
                        .as(instance.name())
                        .isEqualTo(instance.optimum()))
                .count();
        softly.assertAll();
        assertThat(solved).isGreaterThan(50);
    }

    @Test
    void findsThePublishedOptimaOfGroups() {
        SoftAssertions softly = new SoftAssertions();
        long solved = instances()
                .filter(instance -> set(instance).startsWith("wrp") && instance.terminals() <= 16)
                .peek(instance -> {
                    long large = instance.optimum() / instance.terminals() >= 1_000_000 ? 1_000_000 : 100_000;
                    softly.assertThat(weight(PublicInstances.readGroups(instance, large)))
                            .as(instance.name())
                            .isEqualTo(instance.optimum() - large * instance.terminals());
                })
                .count();
        softly.assertAll();
        assertThat(solved).isGreaterThan(5);
    }

    private static long weight(Sketch sketch) {
        return ((Outcome.Least) Solver.solve(sketch.problem())).tree().weight();
    }
}
