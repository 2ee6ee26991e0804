package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;

/** Answers for public instances beside the published optima. */
final class PublicResults {
    private final ResultTable table;
    private final String title;
    private final Map<String, List<Growth.Point>> times = new TreeMap<>();
    private final List<Double> gaps = new ArrayList<>();
    private final List<Double> boundGaps = new ArrayList<>();
    private int count;
    private int least;
    private int withinOneSecond;
    private int wrong;

    PublicResults(String title) {
        this.title = title;
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
                "bound",
                "seconds",
                "peak heap MiB");
    }

    void add(PublicCase.Listed listed, long optimum, Measure<Outcome> solving) {
        count++;
        if (solving.result() instanceof Outcome.Least found) {
            long weight = found.tree().weight();
            least++;
            withinOneSecond += solving.millis() < 1000 ? 1 : 0;
            wrong += weight == optimum ? 0 : 1;
            row(listed, weight == optimum ? "least" : "WRONG", List.of(weight, optimum, weight), solving);
            times.computeIfAbsent(PublicSets.isGrid(listed.set()) ? "grids" : listed.set(), set -> new ArrayList<>())
                    .add(new Growth.Point(listed.nodes(), solving.millis()));
        } else if (solving.result() instanceof Outcome.BestFound found) {
            long weight = found.tree().weight();
            boolean possible = found.lowerBoundWeight() <= optimum && optimum <= weight;
            wrong += possible ? 0 : 1;
            gaps.add(100.0 * (weight - optimum) / optimum);
            boundGaps.add(100.0 * (weight - found.lowerBoundWeight()) / found.lowerBoundWeight());
            String status = possible ? "best found, " + found.why() : "WRONG";
            row(listed, status, List.of(weight, optimum, found.lowerBoundWeight()), solving);
        } else {
            wrong++;
            row(listed, "WRONG: no tree", List.of("-", optimum, "-"), solving);
        }
    }

    private static String median(List<Double> values) {
        return ResultTable.print(Measure.median(values.stream().mapToDouble(Double::doubleValue)));
    }

    private void row(PublicCase.Listed listed, String status, List<Object> weights, Measure<Outcome> solving) {
        table.add(
                listed.set(),
                listed.name(),
                listed.nodes(),
                listed.edges(),
                listed.terminals(),
                status,
                weights.get(0),
                weights.get(1),
                weights.get(2),
                solving.millis() / 1000,
                solving.peakMebibytes());
    }

    void writeTo(Report report, String name, int seconds) {
        if (count == 0) {
            return;
        }
        table.remark(
                "%d instances, %d proven least, %d of them within 1 s, %d at odds with the known optimum. Limit: %d s each."
                        .formatted(count, least, withinOneSecond, wrong, seconds));
        if (!gaps.isEmpty()) {
            table.remark(
                    "Without proof: %d, heavier than the optimum by %s %% and than the bound by %s %% at the median."
                            .formatted(gaps.size(), median(gaps), median(boundGaps)));
        }
        report.write(name, table);
        LogPlot plot = new LogPlot(title, "nodes", "ms");
        times.forEach(plot::add);
        report.write(name, plot);
    }
}
