package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Floors of 1200 ft by 800 ft: how time and memory grow with nodes and with terminals. */
final class LargeFootprint {
    private static final int FEET = 1200;

    private LargeFootprint() {}

    /** 100,000 nodes with 8, 10 and 12 terminals, several seeds. */
    static void runHundredThousand(Report report) {
        ResultTable table = table("Large footprint: 100,000 nodes, seconds of processor time");
        SiteRun.of(SyntheticSite.text(99, FEET, 20_000, 8), 5);
        for (int terminals : new int[] {8, 10, 12}) {
            List<Double> seconds = new ArrayList<>();
            for (long seed = 0; seed < 5; seed++) {
                SiteRun run = SiteRun.of(SyntheticSite.text(seed, FEET, 106_000, terminals), 0);
                add(table, seed, run);
                seconds.add(run.solving().millis() / 1000);
            }
            table.remark("%d terminals: solving takes %s s at the median."
                    .formatted(
                            terminals,
                            ResultTable.print(Measure.median(seconds.stream().mapToDouble(Double::doubleValue)))));
        }
        table.remark("Single runs in a warm machine. Aims: solving under 1, 2.5 and 5 s with 8, 10 and 12 terminals.");
        report.write("footprint", table);
    }

    /** 1,000,000 nodes with 6 and 8 terminals. */
    static void runMillion(Report report) {
        ResultTable table = table("Large footprint: 1,000,000 nodes, seconds of processor time");
        SiteRun.of(SyntheticSite.text(99, FEET, 20_000, 8), 5);
        for (int terminals : new int[] {6, 8}) {
            for (long seed = 0; seed < 2; seed++) {
                add(table, seed, SiteRun.of(SyntheticSite.text(seed, FEET, 1_200_000, terminals), 0));
            }
        }
        table.remark("Single runs. Aims: solving under 5 and 15 s with 6 and 8 terminals, within 4 GiB.");
        report.write("million", table);
    }

    /** Sizes from 5,000 to 500,000 nodes with 8 terminals; 5 to 12 terminals on 50,000 nodes. */
    static void runGrowth(Report report) {
        SiteRun.of(SyntheticSite.text(99, FEET, 20_000, 8), 5);
        ResultTable table = table("Growth, seconds of processor time");
        List<SiteRun> byNodes = new ArrayList<>();
        for (int nodes : new int[] {5_000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000}) {
            for (long seed = 0; seed < 3; seed++) {
                SiteRun run = SiteRun.of(SyntheticSite.text(seed, FEET, nodes, 8), nodes > 100_000 ? 0 : 1);
                byNodes.add(run);
                add(table, seed, run);
            }
        }
        List<SiteRun> byTerminals = new ArrayList<>();
        for (int terminals = 5; terminals <= 12; terminals++) {
            for (long seed = 0; seed < 3; seed++) {
                SiteRun run = SiteRun.of(SyntheticSite.text(seed, FEET, 50_000, terminals), 1);
                byTerminals.add(run);
                add(table, seed, run);
            }
        }
        remarkOnGrowth(table, byNodes, byTerminals);
        report.write("growth", table);
        LogPlot plot = new LogPlot("Growth with nodes, 8 terminals", "nodes", "ms");
        plot.add(
                "network", points(byNodes, SiteRun::nodes, run -> run.building().millis()));
        plot.add("mapping", points(byNodes, SiteRun::nodes, run -> run.mapping().millis()));
        plot.add("solving", points(byNodes, SiteRun::nodes, run -> run.solving().millis()));
        plot.add(
                "straightening",
                points(byNodes, SiteRun::nodes, run -> run.straightening().millis()));
        plot.add(
                "one search per terminal",
                points(byNodes, SiteRun::nodes, run -> run.searching().millis()));
        report.write("growth", plot);
    }

    private static void remarkOnGrowth(ResultTable table, List<SiteRun> byNodes, List<SiteRun> byTerminals) {
        ToDoubleFunction<SiteRun> nodes = SiteRun::nodes;
        table.remark(
                "Exponents of nodes (1 is linear): network %s in time and %s in memory, mapping %s, solving %s, one search per terminal %s."
                        .formatted(
                                ResultTable.print(Growth.exponent(points(
                                        byNodes, nodes, run -> run.building().millis()))),
                                ResultTable.print(Growth.exponent(points(
                                        byNodes, nodes, run -> run.building().peakMebibytes()))),
                                ResultTable.print(Growth.exponent(points(
                                        byNodes, nodes, run -> run.mapping().millis()))),
                                ResultTable.print(Growth.exponent(points(
                                        byNodes, nodes, run -> run.solving().millis()))),
                                ResultTable.print(Growth.exponent(points(
                                        byNodes, nodes, run -> run.searching().millis())))));
        table.remark("Each further terminal multiplies solving by %s."
                .formatted(ResultTable.print(Growth.factor(points(
                        byTerminals, SiteRun::terminals, run -> run.solving().millis())))));
    }

    private static ResultTable table(String title) {
        return new ResultTable(
                title,
                "seed",
                "nodes",
                "edges",
                "terminals",
                "network",
                "mapping",
                "solving",
                "straightening",
                "one search per terminal",
                "solving / searches",
                "peak heap MiB, network",
                "peak heap MiB, all");
    }

    private static void add(ResultTable table, long seed, SiteRun run) {
        table.add(
                seed,
                run.nodes(),
                run.edges(),
                run.terminals(),
                run.building().millis() / 1000,
                run.mapping().millis() / 1000,
                run.solving().millis() / 1000,
                run.straightening().millis() / 1000,
                run.searching().millis() / 1000,
                run.ratio(),
                Math.round(run.building().peakMebibytes()),
                Math.round(run.peakMebibytes()));
    }

    private static List<Growth.Point> points(
            List<SiteRun> runs, ToDoubleFunction<SiteRun> size, ToDoubleFunction<SiteRun> figure) {
        return runs.stream()
                .map(run -> new Growth.Point(size.applyAsDouble(run), figure.applyAsDouble(run)))
                .toList();
    }
}
