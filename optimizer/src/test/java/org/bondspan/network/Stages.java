package org.bondspan.network;

import java.util.List;
import java.util.Optional;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.StretchNeed;
import org.bondspan.site.Site;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.RoutingProblem;
import org.bondspan.solve.Solver;

/** The stages from a site to a straight tree, one by one, so that each can be timed. */
public final class Stages {
    private final Site site;

    public Stages(Site site) {
        this.site = site;
    }

    /** A network, closed to all but the next stage. */
    public record Built(Object network, int nodes, int edges) {}

    /** A network with its routing problem. */
    public record Mapped(Object routes, RoutingProblem problem) {}

    public Built build() {
        Network network = NetworkBuilder.build(site, GroundingElectrodeSystem.of(site), MediaThatMayCarry.of(site));
        return new Built(network, network.nodeCount(), network.arrays().edgeCount());
    }

    public Mapped map(Built built) {
        GroundingElectrodeSystem system = GroundingElectrodeSystem.of(site);
        StretchNeed need = new StretchNeed(site.services(), system.obligations());
        RouteProblem routes =
                new RouteProblem((Network) built.network, system.obligations(), need, List.copyOf(need.listSizes()));
        return new Mapped(routes, routes.toIntegers());
    }

    public Outcome solve(Mapped mapped) {
        return Solver.solve(mapped.problem);
    }

    /** Number of edges of the tree once it is straight. */
    public int straighten(Mapped mapped, Outcome.Least least) {
        RouteProblem routes = (RouteProblem) mapped.routes;
        ChosenTree chosen = ChosenTree.of(least.tree(), routes.terminalCount());
        return new Straightening(routes, Optional.empty(), () -> false)
                .straighten(chosen)
                .ranks()
                .size();
    }
}
