package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A network of about 20,000 nodes with 8 terminals and four sizes, as the viewer solves again while one drags. */
final class TypicalBuilding {
    private static final int SEEDS = 9;
    private static final int RUNS = 5;

    private TypicalBuilding() {}

    static void run(Report report) {
        ResultTable table = new ResultTable(
                "Typical building: 20,000 nodes, 8 terminals, four sizes, warm, milliseconds of processor time",
                "seed",
                "nodes",
                "edges",
                "terminals",
                "network",
                "mapping",
                "solving",
                "straightening",
                "sum",
                "one search per terminal",
                "solving / searches");
        LogPlot plot = new LogPlot("Typical building: stages by case", "nodes", "ms");
        for (long seed = 0; seed < 3; seed++) {
            SiteRun.of(text(seed), RUNS);
        }
        List<SiteRun> runs = new ArrayList<>();
        for (long seed = 0; seed < SEEDS; seed++) {
            SiteRun run = SiteRun.of(text(seed), RUNS);
            runs.add(run);
            table.add(
                    seed,
                    run.nodes(),
                    run.edges(),
                    run.terminals(),
                    run.building().millis(),
                    run.mapping().millis(),
                    run.solving().millis(),
                    run.straightening().millis(),
                    run.total(),
                    run.searching().millis(),
                    run.ratio());
        }
        table.add(
                "median",
                "",
                "",
                "",
                median(runs, run -> run.building().millis()),
                median(runs, run -> run.mapping().millis()),
                median(runs, run -> run.solving().millis()),
                median(runs, run -> run.straightening().millis()),
                median(runs, SiteRun::total),
                median(runs, run -> run.searching().millis()),
                median(runs, SiteRun::ratio));
        table.remark("Each figure is the median of " + RUNS + " runs after a first. Aims: solving under 100,"
                + " with the network under 200, ratio below 10.");
        report.write("typical", table);
        plot.add("network", points(runs, run -> run.building().millis()));
        plot.add("mapping", points(runs, run -> run.mapping().millis()));
        plot.add("solving", points(runs, run -> run.solving().millis()));
        plot.add("straightening", points(runs, run -> run.straightening().millis()));
        plot.add("one search per terminal", points(runs, run -> run.searching().millis()));
        report.write("typical", plot);
    }

    private static String text(long seed) {
        return SyntheticSite.text(seed, 300, 20_000, 8);
    }

    private static double median(List<SiteRun> runs, ToDoubleFunction<SiteRun> figure) {
        return Measure.median(runs.stream().mapToDouble(figure));
    }

    private static List<Growth.Point> points(List<SiteRun> runs, ToDoubleFunction<SiteRun> figure) {
        return runs.stream()
                .map(run -> new Growth.Point(run.nodes(), figure.applyAsDouble(run)))
                .toList();
    }
}
