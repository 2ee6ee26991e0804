package org.bondspan.solve;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * The least weight by an integer program, for needs by pairs with terminal 0 alone. One unit flows from terminal 0 to
 * each other, along arcs bought at no less than the rank of that terminal; an arc bought at a rank is bought at every
 * smaller one, each for the difference. The usual multi-level multicommodity flow (after Balakrishnan, Magnanti and
 * Mirchandani, from memory).
 */
final class IntegerProgram {

    private final Sketch sketch;
    private final MPSolver solver;
    /** Arcs from, to, and their variables by rank. */
    private final List<Arc> arcs = new ArrayList<>();

    private record Arc(int from, int to, List<MPVariable> bought) {}

    IntegerProgram(Sketch sketch, MPSolver solver) {
        this.sketch = sketch;
        this.solver = solver;
    }

    OptionalLong leastWeight() {
        for (Sketch.Stretch edge : sketch.edges()) {
            if (edge.a() != edge.b()) {
                addArc(edge.a(), edge.b(), edge.length(), edge.tariff());
                addArc(edge.b(), edge.a(), edge.length(), edge.tariff());
            }
        }
        int nodes = sketch.metal().size();
        MPConstraint oneWayOut = solver.makeConstraint(1, 1, "out");
        for (int t = 0; t < sketch.terminals().size(); t++) {
            for (Sketch.Landing way : sketch.terminals().get(t)) {
                Arc arc = t == 0
                        ? addArc(nodes, way.node(), way.length(), way.tariff())
                        : addArc(way.node(), nodes + t, way.length(), way.tariff());
                if (t == 0) {
                    // Paid at the need of terminal 0 alone, whatever flows there.
                    arc.bought.forEach(rank -> rank.setUb(1));
                    oneWayOut.setCoefficient(arc.bought.get(0), 1);
                    int needed = need(0);
                    for (int rank = 1; rank <= needed; rank++) {
                        MPConstraint all = solver.makeConstraint(0, 0, "");
                        all.setCoefficient(arc.bought.get(rank), 1);
                        all.setCoefficient(arc.bought.get(0), -1);
                    }
                }
            }
        }
        for (int t = 1; t < sketch.terminals().size(); t++) {
            addFlow(nodes, nodes + t, need(t));
        }
        return solve();
    }

    private int need(int terminal) {
        return sketch.need().rank(1L << terminal);
    }

    private Arc addArc(int from, int to, long length, int tariff) {
        List<MPVariable> bought = new ArrayList<>();
        MPObjective weight = solver.objective();
        long below = 0;
        for (int rank = 0; rank < sketch.ranks(); rank++) {
            int best = sketch.bought(tariff, rank);
            MPVariable variable = solver.makeIntVar(0, best < 0 ? 0 : 1, "");
            if (best >= 0) {
                long at = sketch.tariffs().get(tariff).get(best) * length;
                weight.setCoefficient(variable, (double) (at - below));
                below = at;
            }
            if (rank > 0) {
                MPConstraint nested = solver.makeConstraint(0, 1, "");
                nested.setCoefficient(bought.get(rank - 1), 1);
                nested.setCoefficient(variable, -1);
            }
            bought.add(variable);
        }
        Arc arc = new Arc(from, to, bought);
        arcs.add(arc);
        return arc;
    }

    private void addFlow(int source, int sink, int rank) {
        int nodes = sketch.metal().size() + sketch.terminals().size();
        List<MPConstraint> balance = new ArrayList<>();
        for (int v = 0; v < nodes; v++) {
            int supply = (v == source ? 1 : 0) - (v == sink ? 1 : 0);
            balance.add(solver.makeConstraint(supply, supply, ""));
        }
        for (Arc arc : arcs) {
            MPVariable flow = solver.makeNumVar(0, 1, "");
            balance.get(arc.from).setCoefficient(flow, 1);
            balance.get(arc.to).setCoefficient(flow, -1);
            MPConstraint capacity = solver.makeConstraint(0, 1, "");
            capacity.setCoefficient(arc.bought.get(rank), 1);
            capacity.setCoefficient(flow, -1);
        }
    }

    private OptionalLong solve() {
        solver.objective().setMinimization();
        MPSolver.ResultStatus status = solver.solve();
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("the integer program ended as " + status);
        }
        return OptionalLong.of(Math.round(solver.objective().value()));
    }
}
