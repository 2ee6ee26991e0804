package org.bondspan.benchmark;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;
import org.bondspan.solve.Solver;
import org.jspecify.annotations.Nullable;

/**
 * Against the multicommodity-flow integer program, solved by HiGHS on one thread through OR-Tools. Both times begin
 * with the same lists of stretches and terminals, so each holds the making of its own model.
 */
final class IntegerProgramPeer {
    private static final List<String> GRIDS = List.of("lin", "msm", "diw", "dmxa", "gap", "taq");

    private IntegerProgramPeer() {}

    static void run(Report report, int seconds) {
        Loader.loadNativeLibraries();
        ResultTable table = new ResultTable(
                "Against an integer program (HiGHS, one thread), milliseconds",
                "instance",
                "nodes",
                "edges",
                "terminals",
                "sizes",
                "weight",
                "weight by the program",
                "solving",
                "program",
                "program / solving");
        List<Growth.Point> ratios = new ArrayList<>();
        List<PublicCase> cases = cases(report);
        cases.forEach(one -> Solver.solve(one.problem()));
        for (PublicCase one : cases) {
            Measure<Outcome> solving = Measure.warm(3, () -> Solver.solve(one.problem()));
            Measure<OptionalLong> program = Measure.once(() -> byProgram(one, seconds));
            double ratio = program.millis() / solving.millis();
            boolean both = program.result().isPresent() && solving.result() instanceof Outcome.Least;
            if (both) {
                ratios.add(new Growth.Point(one.problem().nodeCount(), ratio));
            }
            table.add(
                    one.name(),
                    one.problem().nodeCount(),
                    one.problem().edgeCount(),
                    one.problem().terminalCount(),
                    one.problem().ranks(),
                    solving.result() instanceof Outcome.Least least
                            ? least.tree().weight()
                            : "impossible",
                    program.result().isPresent() ? program.result().getAsLong() : "none within " + seconds + " s",
                    solving.millis(),
                    program.millis(),
                    both ? ratio : "-");
        }
        table.remark("Median of program / solving over the %d that both solve: %s. Aim: at least 50."
                .formatted(
                        ratios.size(),
                        ResultTable.print(Measure.median(ratios.stream().mapToDouble(Growth.Point::value)))));
        report.write("integer-program", table);
        LogPlot plot = new LogPlot("Integer program over solving", "nodes", "times as long");
        plot.add("HiGHS, one thread", ratios);
        report.write("integer-program", plot);
    }

    private static List<PublicCase> cases(Report report) {
        List<PublicCase> cases = new ArrayList<>();
        PublicSets.choose(
                        report,
                        listed -> GRIDS.contains(listed.set()) && listed.nodes() <= 600 && listed.terminals() <= 12)
                .forEach(listed -> cases.add(listed.read()));
        for (int sizes = 1; sizes <= 4; sizes++) {
            for (int side = 8; side <= 16; side += 4) {
                cases.add(PublicCase.floorOfSizes(10L * sizes + side, side, 6, sizes));
            }
        }
        return cases;
    }

    private static OptionalLong byProgram(PublicCase one, int seconds) {
        @Nullable MPSolver highs = MPSolver.createSolver("HIGHS");
        if (highs == null) {
            throw new IllegalStateException("no HiGHS in this OR-Tools");
        }
        highs.suppressOutput();
        highs.setTimeLimit(seconds * 1000L);
        if (!highs.setNumThreads(1)) {
            throw new IllegalStateException("HiGHS does not take a number of threads");
        }
        try {
            return one.leastWeightBy(highs);
        } catch (IllegalArgumentException | IllegalStateException limit) {
            // At its limit without a tree HiGHS ends in a status that OR-Tools' Java does not know.
            return OptionalLong.empty();
        }
    }
}
