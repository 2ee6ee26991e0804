package org.bondspan.solve;

import com.google.ortools.linearsolver.MPSolver;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** One instance with what is known of it, open to the benchmarks. */
public final class PublicCase {
    private final String set;
    private final String name;
    private final Sketch sketch;
    private final OptionalLong optimum;

    private PublicCase(String set, String name, Sketch sketch, OptionalLong optimum) {
        this.set = set;
        this.name = name;
        this.sketch = sketch;
        this.optimum = optimum;
    }

    /** A public instance that has not been read yet. */
    public record Listed(String set, String name, int nodes, int edges, int terminals, long optimum, Path file) {
        private PublicInstances.Instance instance() {
            return new PublicInstances.Instance(file, nodes, edges, terminals, optimum);
        }

        /** Reads it; sets WRP3 and WRP4 as groups, without their dummy terminals. */
        public PublicCase read() {
            if (!set.startsWith("wrp")) {
                return new PublicCase(set, name, PublicInstances.read(instance()), OptionalLong.of(optimum));
            }
            long large = optimum / terminals >= 1_000_000 ? 1_000_000 : 100_000;
            Sketch groups = PublicInstances.readGroups(instance(), large);
            return new PublicCase(set, name, groups, OptionalLong.of(optimum - large * terminals));
        }
    }

    /** The public instances, unless there is no folder with them. */
    public static Optional<List<Listed>> list() {
        if (System.getProperty("benchmarks", "").isBlank()) {
            System.clearProperty("benchmarks");
        }
        return PublicInstances.findFolder()
                .map(folder -> PublicInstances.list(folder).stream()
                        .map(instance -> new Listed(
                                instance.file()
                                        .getName(instance.file().getNameCount() - 2)
                                        .toString(),
                                instance.name().replace(".gr", ""),
                                instance.nodes(),
                                instance.edges(),
                                instance.terminals(),
                                instance.optimum(),
                                instance.file()))
                        .toList());
    }

    /** A random floor of one size with every terminal at its node. */
    public static PublicCase floor(long seed, int side, int terminals) {
        return new PublicCase(
                "floor",
                "floor-" + side + "-" + seed,
                GridSketch.plain(seed, side, terminals, 1),
                OptionalLong.empty());
    }

    /** A random floor of several sizes with steel, a ring, make-up and choices. */
    public static PublicCase floorOfSizes(long seed, int side, int terminals, int ranks) {
        return new PublicCase(
                "sizes",
                "sizes-" + side + "-" + seed,
                GridSketch.rich(seed, side, terminals, ranks),
                OptionalLong.empty());
    }

    public String set() {
        return set;
    }

    public String name() {
        return name;
    }

    public OptionalLong optimum() {
        return optimum;
    }

    public RoutingProblem problem() {
        return sketch.problem();
    }

    /** By the integer program of the tests, on a solver that holds nothing yet; empty when there is no tree. */
    public OptionalLong leastWeightBy(MPSolver solver) {
        return new IntegerProgram(sketch, solver).leastWeight();
    }
}
