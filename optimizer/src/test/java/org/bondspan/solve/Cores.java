package org.bondspan.solve;

import java.util.List;
import java.util.Optional;

/** The core of a sketch, for tests of what searches it. */
final class Cores {

    private Cores() {}

    static Optional<Core> findCore(Sketch sketch) {
        RoutingProblem problem = sketch.problem();
        Spots spots = Spots.of(problem);
        List<Leaf> leaves = new Landings(problem, spots).leaves();
        return leaves.size() < 2 ? Optional.empty() : new Presolve(problem, spots, leaves).findCore(Shortcuts.ALL);
    }
}
