package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;

/**
 * Finds a tree of least weight, then length, then taps, and proves that none is better. The same problem always gives
 * the same tree.
 *
 * <p>Nodes that lie together become one, the graph is shrunk without losing a least tree, and what is left is searched
 * by a dynamic programme over sets of terminals. Time and memory grow exponentially with the number of terminals and
 * about linearly with the size of the graph. Where there are too many terminals, or too little time or memory, the
 * answer is the best tree found with a lower bound; see {@link CoreSolver}.
 */
public final class Solver {

    private final RoutingProblem problem;
    private final Shortcuts shortcuts;
    private final Meter meter;
    private final Spots spots;
    private final List<Leaf> leaves;

    private Solver(RoutingProblem problem, Shortcuts shortcuts, Limits limits) {
        this.problem = problem;
        meter = Meter.of(limits);
        this.shortcuts = shortcuts;
        spots = Spots.of(problem);
        leaves = new Landings(problem, spots).leaves();
    }

    /** Solves a problem without limit of time. */
    public static Outcome solve(RoutingProblem problem) {
        return solve(problem, Limits.none());
    }

    /** Solves a problem within limits; what was found when they are reached is the answer. */
    public static Outcome solve(RoutingProblem problem, Limits limits) {
        return solve(problem, Shortcuts.ALL, limits);
    }

    static Outcome solve(RoutingProblem problem, Shortcuts shortcuts) {
        return solve(problem, shortcuts, Limits.none());
    }

    private static Outcome solve(RoutingProblem problem, Shortcuts shortcuts, Limits limits) {
        return problem.terminalCount() < 2
                ? new Outcome.Least(Tree.empty(problem.terminalCount()))
                : new Solver(problem, shortcuts, limits).run();
    }

    private Outcome run() {
        if (leaves.stream().anyMatch(leaf -> leaf.size() == 0)) {
            return new Outcome.Impossible();
        }
        if (leaves.size() == 1) {
            return new Outcome.Least(new TreeRebuild(
                            problem,
                            spots,
                            spotsOfTerminals(leaf -> leaves.get(leaf).node(0)))
                    .tree());
        }
        Presolve presolve = new Presolve(problem, spots, leaves);
        Optional<Core> core = presolve.findCore(shortcuts);
        return core.map(found -> new DividedSolver(found, shortcuts, meter)
                        .solve()
                        .with(tree -> rebuild(found, tree, presolve.pool())))
                .orElseGet(Outcome.Impossible::new);
    }

    private Tree rebuild(Core core, CoreTree found, StretchPool pool) {
        TreeRebuild rebuild =
                new TreeRebuild(problem, spots, spotsOfTerminals(leaf -> core.origin(found.landing(leaf))));
        for (int i = 0; i < found.size(); i++) {
            pool.forEachEdge(core.stretch(found.edge(i)), found.grade(i), rebuild::add);
        }
        Tree tree = rebuild.tree();
        if (!tree.cost().equals(found.cost())) {
            throw new IllegalStateException("the tree found costs " + found.cost() + ", rebuilt " + tree.cost());
        }
        return tree;
    }

    private int[] spotsOfTerminals(IntUnaryOperator spotOfLeaf) {
        int[] spot = new int[problem.terminalCount()];
        Arrays.fill(spot, -1);
        for (int leaf = 0; leaf < leaves.size(); leaf++) {
            int landing = spotOfLeaf.applyAsInt(leaf);
            leaves.get(leaf).members().stream().forEach(terminal -> spot[terminal] = landing);
        }
        return spot;
    }
}
