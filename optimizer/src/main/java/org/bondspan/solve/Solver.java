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
 * about linearly with the size of the graph.
 */
public final class Solver {

    private static final int MOST_LEAVES = 24;

    private final RoutingProblem problem;
    private final Shortcuts shortcuts;
    private final Spots spots;
    private final List<Leaf> leaves;

    private Solver(RoutingProblem problem, Shortcuts shortcuts) {
        this.problem = problem;
        this.shortcuts = shortcuts;
        spots = Spots.of(problem);
        leaves = new Landings(problem, spots).leaves();
    }

    /**
     * Solves a problem.
     *
     * @throws IllegalArgumentException when more than 24 terminals remain after those that land at the same single
     *     place have been put together
     */
    public static Outcome solve(RoutingProblem problem) {
        return solve(problem, Shortcuts.ALL);
    }

    static Outcome solve(RoutingProblem problem, Shortcuts shortcuts) {
        return problem.terminalCount() < 2
                ? new Outcome.Least(Tree.empty(problem.terminalCount()))
                : new Solver(problem, shortcuts).run();
    }

    private Outcome run() {
        if (leaves.size() > MOST_LEAVES) {
            throw new IllegalArgumentException(
                    leaves.size() + " terminals to be connected; more than " + MOST_LEAVES + " cannot be searched yet");
        }
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
        return core.flatMap(found -> new LeastTreeSearch(found, shortcuts)
                        .findTree()
                        .map(tree -> (Outcome) new Outcome.Least(rebuild(found, tree, presolve.pool()))))
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
            for (long left = leaves.get(leaf).members(); left != 0; left &= left - 1) {
                spot[Long.numberOfTrailingZeros(left)] = spotOfLeaf.applyAsInt(leaf);
            }
        }
        return spot;
    }
}
