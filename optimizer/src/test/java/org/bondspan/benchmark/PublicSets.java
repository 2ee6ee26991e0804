package org.bondspan.benchmark;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.bondspan.solve.Limits;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;
import org.bondspan.solve.Solver;

/** Public instances with their published optima; they are no part of the project, and no folder means no run. */
final class PublicSets {
    private static final List<String> GRIDS = List.of("lin", "msm", "diw", "dmxa", "gap", "taq", "alue", "alut");

    private PublicSets() {}

    private static boolean isSmall(PublicCase.Listed listed) {
        return listed.terminals() <= (isGrid(listed.set()) ? 20 : 15);
    }

    private static boolean isLarge(PublicCase.Listed listed) {
        return !isSmall(listed) && listed.terminals() <= 200;
    }

    /** Instances chosen from the folder, smallest first; none with a word on the screen when there is no folder. */
    static List<PublicCase.Listed> choose(Report report, Predicate<PublicCase.Listed> which) {
        Optional<List<PublicCase.Listed>> all = PublicCase.list();
        if (all.isEmpty()) {
            report.say("Skipped: no folder with public instances; give one by -Dbenchmarks=...");
        }
        return all.orElse(List.of()).stream()
                .filter(which)
                .sorted((a, b) -> a.edges() != b.edges()
                        ? Integer.compare(a.edges(), b.edges())
                        : a.name().compareTo(b.name()))
                .toList();
    }

    /** Grid sets with up to 20 terminals, the others with up to 15: first run of each in a warm machine. */
    static void runSmall(Report report, int seconds) {
        List<PublicCase.Listed> chosen = choose(report, PublicSets::isSmall);
        chosen.stream().limit(20).forEach(listed -> Solver.solve(listed.read().problem()));
        run(report, chosen, seconds, "public", "Public instances: grids up to 20 terminals, others up to 15");
    }

    /** The others with up to 200 terminals. */
    static void runMany(Report report, int seconds) {
        run(
                report,
                choose(report, PublicSets::isLarge),
                seconds,
                "many",
                "Public instances with up to 200 terminals that are not in the table before");
    }

    private static void run(Report report, List<PublicCase.Listed> chosen, int seconds, String name, String title) {
        PublicResults results = new PublicResults(title);
        for (PublicCase.Listed listed : chosen) {
            PublicCase instance = listed.read();
            Limits limits = Limits.none().within(Duration.ofSeconds(seconds));
            Measure<Outcome> solving = Measure.once(() -> Solver.solve(instance.problem(), limits));
            results.add(listed, instance.optimum().orElseThrow(), solving);
        }
        results.writeTo(report, name, seconds);
    }

    static boolean isGrid(String set) {
        return GRIDS.contains(set);
    }
}
