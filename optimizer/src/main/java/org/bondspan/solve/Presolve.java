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
        boolean[] useful = usefulSpots();
        boolean[] landing = new boolean[spots.count()];
        boolean any = false;
        for (Leaf leaf : leaves) {
            for (int i = 0; i < leaf.size(); i++) {
                landing[leaf.node(i)] = useful[leaf.node(i)];
                any |= useful[leaf.node(i)];
            }
        }
        if (!any) {
            return Optional.empty();
        }
        Reducer graph = new Reducer(landing, pool, problem.edgeCount());
        for (int e = 0; e < problem.edgeCount(); e++) {
            if (links(e) && useful[one(e)]) {
                graph.add(one(e), other(e), pool.addEdge(problem, need, e));
            }
        }
        graph.mergeParallels();
        if (shortcuts.reduction()) {
            graph.shrink();
        }
        return Optional.of(new Core(graph, spots::isMetal, need, leaves, problem.tapWeight()));
    }

    /** By spot: whether every leaf can land somewhere in its piece of the graph. A tree lies in one piece. */
    private boolean[] usefulSpots() {
        Classes pieces = new Classes(spots.count());
        for (int e = 0; e < problem.edgeCount(); e++) {
            if (links(e)) {
                pieces.join(one(e), other(e));
            }
        }
        int[] leavesThere = new int[spots.count()];
        int[] last = new int[spots.count()];
        Arrays.fill(last, -1);
        for (int i = 0; i < leaves.size(); i++) {
            for (int j = 0; j < leaves.get(i).size(); j++) {
                int piece = pieces.find(leaves.get(i).node(j));
                leavesThere[piece] += last[piece] == i ? 0 : 1;
                last[piece] = i;
            }
        }
        boolean[] useful = new boolean[leavesThere.length];
        for (int spot = 0; spot < useful.length; spot++) {
            useful[spot] = leavesThere[pieces.find(spot)] == leaves.size();
        }
        return useful;
    }

    /** Whether an edge may be used between two different spots. */
    private boolean links(int edge) {
        return one(edge) != other(edge)
                && problem.tariffs().bought(problem.edges().tariff(edge), need.rank(0)) >= 0;
    }

    private int one(int edge) {
        return spots.of(problem.edges().a(edge));
    }

    private int other(int edge) {
        return spots.of(problem.edges().b(edge));
    }
}
