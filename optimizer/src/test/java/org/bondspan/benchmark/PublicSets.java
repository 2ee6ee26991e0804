package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;
import org.bondspan.solve.Solver;

/** Public instances with their published optima; they are no part of the project, and no folder means no run. */
final class PublicSets {
    private static final List<String> GRIDS = List.of("lin", "msm", "diw", "dmxa", "gap", "taq", "alue", "alut");

    private PublicSets() {}

    private static boolean isGrid(PublicCase.Listed listed) {
        return GRIDS.contains(listed.set());
    }

    private static boolean isSmall(PublicCase.Listed listed) {
        return listed.terminals() <= (isGrid(listed) ? 20 : 15);
    }

    private static boolean isMedium(PublicCase.Listed listed) {
        return !isSmall(listed) && listed.terminals() <= 40;
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
        Results results = new Results("Public instances: grids up to 20 terminals, others up to 15");
        for (PublicCase.Listed listed : chosen) {
            PublicCase instance = listed.read();
            Measure<Outcome> solving = Measure.once(() -> Solver.solve(instance.problem()));
            long weight = ((Outcome.Least) solving.result()).tree().weight();
            results.add(listed, new Lone.Ending("least", weight, solving.millis(), solving.peakMebibytes()));
        }
        results.table.remark("Time limit of an instance, for those with more terminals: " + seconds + " s.");
        results.writeTo(report, "public");
    }

    /** The others with up to 40 terminals: each in a process of its own, the first run there, under a limit. */
    static void runMany(Report report, int seconds) {
        Results results = new Results("Public instances with up to 40 terminals that are not in the table before");
        for (PublicCase.Listed listed : choose(report, PublicSets::isMedium)) {
            results.add(listed, Lone.solve(listed, seconds));
        }
        results.table.remark("Limit for an instance: " + seconds + " s, its start included.");
        results.writeTo(report, "many");
    }

    private static final class Results {
        private final ResultTable table;
        private final Map<String, List<Growth.Point>> seconds = new TreeMap<>();
        private int least;
        private int wrong;
        private int withinOne;
        private int count;

        Results(String title) {
            table = new ResultTable(
                    title,
                    "set",
                    "instance",
                    "nodes",
                    "edges",
                    "terminals",
                    "status",
                    "weight",
                    "known optimum",
                    "seconds",
                    "peak heap MiB");
        }

        void add(PublicCase.Listed listed, Lone.Ending ending) {
            long optimum = listed.read().optimum().orElseThrow();
            boolean proven = ending.status().equals("least");
            count++;
            least += proven ? 1 : 0;
            wrong += proven && ending.weight() != optimum ? 1 : 0;
            withinOne += proven && ending.millis() < 1000 ? 1 : 0;
            table.add(
                    listed.set(),
                    listed.name(),
                    listed.nodes(),
                    listed.edges(),
                    listed.terminals(),
                    proven && ending.weight() != optimum ? "WRONG" : ending.status(),
                    proven ? ending.weight() : "-",
                    optimum,
                    ending.millis() / 1000,
                    ending.peakMebibytes());
            if (proven) {
                seconds.computeIfAbsent(isGrid(listed) ? "grids" : listed.set(), ignored -> new ArrayList<>())
                        .add(new Growth.Point(listed.nodes(), ending.millis()));
            }
        }

        void writeTo(Report report, String name) {
            if (count == 0) {
                return;
            }
            table.remark("%d instances, %d proven least, %d of them within 1 s, %d other than the known optimum."
                    .formatted(count, least, withinOne, wrong));
            report.write(name, table);
            LogPlot plot = new LogPlot(table.title(), "nodes", "ms");
            seconds.forEach(plot::add);
            report.write(name, plot);
        }
    }
}
