package org.bondspan.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** From a problem to the core that has to be searched. */
final class Presolve {

    private final RoutingProblem problem;
    private final Spots spots;
    private final List<Leaf> leaves;
    private final CoreNeed need;
    private final StretchPool pool;

    Presolve(RoutingProblem problem, Spots spots, List<Leaf> leaves) {
        this.problem = problem;
        this.spots = spots;
        this.leaves = leaves;
        need = CoreNeed.of(problem, leaves);
        pool = new StretchPool(need.grades(), problem.edgeCount());
    }

    StretchPool pool() {
        return pool;
    }

    /** The core, unless the leaves do not even lie in one piece of the graph. */
    Optional<Core> findCore(Shortcuts shortcuts) {
        boolean[] landing = new boolean[spots.count()];
        for (Leaf leaf : leaves) {
            for (int i = 0; i < leaf.size(); i++) {
                landing[leaf.node(i)] = true;
            }
        }
        Reducer graph = new Reducer(spots.count(), landing, pool, problem.edgeCount());
        Classes pieces = new Classes(spots.count());
        addEdges(graph, pieces);
        boolean[] useful = usefulPieces(pieces);
        graph.mergeParallels();
        if (shortcuts.reduction()) {
            graph.shrink();
        }
        int[] number = new int[spots.count()];
        Arrays.fill(number, -1);
        int nodes = 0;
        for (int v = 0; v < number.length; v++) {
            if (useful[pieces.find(v)] && (landing[v] || graph.degree(v) > 0)) {
                number[v] = nodes++;
            }
        }
        return nodes == 0 ? Optional.empty() : Optional.of(new Core(graph, number, nodes, spots, need, leaves, pool));
    }

    private void addEdges(Reducer graph, Classes pieces) {
        for (int e = 0; e < problem.edgeCount(); e++) {
            int a = spots.of(problem.edges().a(e));
            int b = spots.of(problem.edges().b(e));
            if (a != b && problem.tariffs().bought(problem.edges().tariff(e), need.rank(0)) >= 0) {
                graph.add(a, b, pool.addEdge(problem, need, e));
                pieces.join(a, b);
            }
        }
    }

    /** By head of a piece of the graph: whether every leaf can land there. A tree lies in one piece. */
    private boolean[] usefulPieces(Classes pieces) {
        int[] leavesThere = new int[spots.count()];
        for (int i = 0; i < leaves.size(); i++) {
            for (int j = 0; j < leaves.get(i).size(); j++) {
                leavesThere[pieces.find(leaves.get(i).node(j))] |= 1 << i;
            }
        }
        boolean[] useful = new boolean[leavesThere.length];
        for (int piece = 0; piece < useful.length; piece++) {
            useful[piece] = leavesThere[piece] == (1 << leaves.size()) - 1;
        }
        return useful;
    }
}
