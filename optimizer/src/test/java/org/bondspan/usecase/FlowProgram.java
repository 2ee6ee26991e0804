package org.bondspan.usecase;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * The least weight on a {@link Raster} by an integer program, for sites where no lateral feeds two services: from every
 * service a unit flows to everything that must be connected, along runs bought at no less than that pair needs. Runs
 * are bought in the direction in which they lead away from the first service.
 */
final class FlowProgram {
    private static final int SIZES = Book.SIZES.size();

    private final Raster raster;
    private final MPSolver solver;
    private final int services;
    private final List<Arc> arcs = new ArrayList<>();
    private final List<List<MPVariable>> chosen = new ArrayList<>();

    /** One direction of an edge; {@code bought.get(r)} is 1 where it has size r or more. */
    private record Arc(int from, int to, List<MPVariable> bought) {}

    FlowProgram(Raster raster, int services, MPSolver solver) {
        this.raster = raster;
        this.services = services;
        this.solver = solver;
    }

    /** Tenths of a pound per 1000 ft times feet; empty when something cannot be reached. */
    OptionalLong leastWeight() {
        raster.edges().forEach(edge -> {
            arcs.add(arc(edge.a(), edge.b(), edge));
            arcs.add(arc(edge.b(), edge.a(), edge));
        });
        for (int t = 0; t < raster.terminals().size(); t++) {
            choose(t);
        }
        for (int j = services; j < raster.terminals().size(); j++) {
            List<List<MPVariable>> flows = new ArrayList<>();
            for (int s = 0; s < services; s++) {
                flows.add(addFlow(s, j, raster.book().needOfPair(s, j - services)));
            }
            if (raster.book().isOfOneLateral()) {
                addSum(flows, raster.book().needOfSum(j - services));
            }
        }
        if (raster.book().isOfOneLateral()) {
            addFlow(0, 1, 0);
            enterPlacesOnce();
        }
        solver.objective().setMinimization();
        MPSolver.ResultStatus status = solver.solve();
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("the integer program ended as " + status);
        }
        return OptionalLong.of(
                Math.round(solver.objective().value()) + raster.book().jumpers());
    }

    private Arc arc(int from, int to, Raster.Edge edge) {
        List<MPVariable> bought = new ArrayList<>();
        long below = 0;
        for (int size = 0; size < SIZES; size++) {
            long weight = edge.weight(size);
            boolean allowed = weight < Long.MAX_VALUE;
            MPVariable variable = solver.makeIntVar(0, allowed ? 1 : 0, "");
            if (allowed) {
                solver.objective().setCoefficient(variable, (double) (weight - below));
                below = weight;
            }
            if (size > 0) {
                MPConstraint nested = solver.makeConstraint(0, 1, "");
                nested.setCoefficient(bought.get(size - 1), 1);
                nested.setCoefficient(variable, -1);
            }
            bought.add(variable);
        }
        return new Arc(from, to, bought);
    }

    /** One conductor lands on a terminal, at the size that it needs alone. */
    private void choose(int terminal) {
        int size = raster.book().need(1 << terminal);
        MPConstraint one = solver.makeConstraint(1, 1, "");
        List<MPVariable> ways = new ArrayList<>();
        for (Raster.Landing way : raster.terminals().get(terminal)) {
            MPVariable variable = solver.makeIntVar(0, 1, "");
            solver.objective().setCoefficient(variable, (double) way.weight(size));
            one.setCoefficient(variable, 1);
            ways.add(variable);
        }
        chosen.add(ways);
    }

    /** Both directions of an edge one after the other. */
    private void addSum(List<List<MPVariable>> flows, int size) {
        for (int i = 0; i < arcs.size(); i++) {
            MPConstraint together = solver.makeConstraint(-1, 1, "");
            together.setCoefficient(flows.get(0).get(i), 1);
            together.setCoefficient(flows.get(1).get(i), 1);
            together.setCoefficient(arcs.get(i).bought.get(size), -1);
        }
    }

    private void enterPlacesOnce() {
        List<MPConstraint> entered = new ArrayList<>();
        for (int v = 0; v < raster.nodeCount(); v++) {
            entered.add(solver.makeConstraint(0, 1, ""));
        }
        arcs.forEach(arc -> entered.get(arc.to).setCoefficient(arc.bought.get(0), 1));
        addEnds(entered, 0, 1);
    }

    private List<MPVariable> addFlow(int service, int thing, int size) {
        List<MPConstraint> balance = new ArrayList<>();
        List<MPVariable> flows = new ArrayList<>();
        for (int v = 0; v < raster.nodeCount(); v++) {
            balance.add(solver.makeConstraint(0, 0, ""));
        }
        for (int i = 0; i < arcs.size(); i += 2) {
            Arc there = arcs.get(i);
            Arc back = arcs.get(i + 1);
            MPVariable ahead = flow(balance, there);
            MPVariable backward = flow(balance, back);
            flows.addAll(List.of(ahead, backward));
            if (service == 0) {
                within(there.bought.get(size), ahead);
                within(back.bought.get(size), backward);
            } else {
                MPConstraint both = solver.makeConstraint(0, 2, "");
                both.setCoefficient(there.bought.get(size), 1);
                both.setCoefficient(back.bought.get(size), 1);
                both.setCoefficient(ahead, -1);
                both.setCoefficient(backward, -1);
            }
        }
        addEnds(balance, service, -1);
        addEnds(balance, thing, 1);
        return flows;
    }

    private MPVariable flow(List<MPConstraint> balance, Arc arc) {
        MPVariable flow = raster.book().isOfOneLateral() ? solver.makeIntVar(0, 1, "") : solver.makeNumVar(0, 1, "");
        balance.get(arc.from).setCoefficient(flow, 1);
        balance.get(arc.to).setCoefficient(flow, -1);
        return flow;
    }

    private void within(MPVariable bought, MPVariable flow) {
        MPConstraint capacity = solver.makeConstraint(0, 1, "");
        capacity.setCoefficient(bought, 1);
        capacity.setCoefficient(flow, -1);
    }

    /** The flow enters or leaves at the way that is chosen. */
    private void addEnds(List<MPConstraint> balance, int terminal, int sign) {
        for (int w = 0; w < chosen.get(terminal).size(); w++) {
            int node = raster.terminals().get(terminal).get(w).node();
            balance.get(node).setCoefficient(chosen.get(terminal).get(w), sign);
        }
    }
}
