package org.bondspan.benchmark;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;
import org.bondspan.solve.RoutingProblem;
import org.bondspan.solve.Solver;
import org.jgrapht.Graph;
import org.jgrapht.alg.steiner.KouMarkowskyBermanAlgorithm;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.WeightedMultigraph;

/** Against JGraphT's approximation of Kou, Markowsky and Berman (Acta Informatica 15, 1981), one size. */
final class ApproximationPeer {
    private static final List<String> GRIDS = List.of("lin", "msm", "diw", "dmxa", "gap", "taq", "alue", "alut");

    private ApproximationPeer() {}

    static void run(Report report) {
        ResultTable table = new ResultTable(
                "Against the Kou-Markowsky-Berman approximation of JGraphT, one size, milliseconds",
                "instance",
                "nodes",
                "edges",
                "terminals",
                "length",
                "length by the approximation",
                "saved %",
                "solving",
                "approximation",
                "solving / approximation");
        List<Double> saved = new ArrayList<>();
        List<Growth.Point> ratios = new ArrayList<>();
        List<PublicCase> cases = cases(report);
        cases.stream().limit(10).forEach(one -> {
            Solver.solve(one.problem());
            approximate(one.problem());
        });
        for (PublicCase one : cases) {
            RoutingProblem problem = one.problem();
            Measure<Outcome> solving = Measure.warm(1, () -> Solver.solve(problem));
            long length = ((Outcome.Least) solving.result()).tree().length();
            Graph<Integer, DefaultWeightedEdge> graph = graph(problem);
            Measure<Double> peer = Measure.warm(1, () -> approximate(problem, graph));
            double percent = 100 * (1 - length / peer.result());
            double ratio = solving.millis() / peer.millis();
            saved.add(percent);
            ratios.add(new Growth.Point(problem.nodeCount(), ratio));
            table.add(
                    one.name(),
                    problem.nodeCount(),
                    problem.edgeCount(),
                    problem.terminalCount(),
                    length,
                    Math.round(peer.result()),
                    percent,
                    solving.millis(),
                    peer.millis(),
                    ratio);
        }
        long heavier = saved.stream().filter(percent -> percent < 0).count();
        table.remark(
                "%d graphs, heavier than the approximation on %d; saved %s %% at the median, %s %% at most; time over its time %s at the median."
                        .formatted(
                                saved.size(),
                                heavier,
                                ResultTable.print(Measure.median(saved.stream().mapToDouble(Double::doubleValue))),
                                ResultTable.print(saved.stream()
                                        .mapToDouble(Double::doubleValue)
                                        .max()
                                        .orElse(0)),
                                ResultTable.print(Measure.median(ratios.stream().mapToDouble(Growth.Point::value)))));
        report.write("approximation", table);
        LogPlot plot = new LogPlot("Solving over the approximation", "nodes", "times as long");
        plot.add("exact over approximation", ratios);
        report.write("approximation", plot);
    }

    private static List<PublicCase> cases(Report report) {
        List<PublicCase> cases = new ArrayList<>();
        PublicSets.choose(report, listed -> GRIDS.contains(listed.set()) && listed.terminals() <= 20)
                .forEach(listed -> cases.add(listed.read()));
        for (long seed = 0; seed < 3; seed++) {
            cases.add(PublicCase.floor(seed, 50, 8));
            cases.add(PublicCase.floor(seed, 140, 8));
        }
        return cases;
    }

    private static Graph<Integer, DefaultWeightedEdge> graph(RoutingProblem problem) {
        Graph<Integer, DefaultWeightedEdge> graph = new WeightedMultigraph<>(DefaultWeightedEdge.class);
        for (int node = 0; node < problem.nodeCount(); node++) {
            graph.addVertex(node);
        }
        for (int edge = 0; edge < problem.edgeCount(); edge++) {
            if (problem.from(edge) != problem.to(edge)) {
                DefaultWeightedEdge made = graph.addEdge(problem.from(edge), problem.to(edge));
                graph.setEdgeWeight(made, (double) problem.length(edge));
            }
        }
        return graph;
    }

    private static double approximate(RoutingProblem problem) {
        return approximate(problem, graph(problem));
    }

    private static double approximate(RoutingProblem problem, Graph<Integer, DefaultWeightedEdge> graph) {
        Set<Integer> terminals = new HashSet<>();
        for (int terminal = 0; terminal < problem.terminalCount(); terminal++) {
            terminals.add(problem.attachmentNode(terminal, 0));
        }
        return new KouMarkowskyBermanAlgorithm<>(graph)
                .getSteinerTree(terminals)
                .getWeight();
    }
}
