package org.bondspan.solve;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * What the subset programme found: no tree costs less. It is a tree of states, which may come to a node more than once;
 * as long as it does not, it is a tree in the core at this very cost.
 */
final class Draft {

    private final Core core;
    private final Map<Integer, Integer> gradeOfEdge;
    private final int[] landings;
    private final Cost cost;
    private final Optional<Crossing> crossing;

    Draft(Core core, Map<Integer, Integer> gradeOfEdge, int[] landings, Cost cost, Optional<Crossing> crossing) {
        this.core = core;
        this.gradeOfEdge = gradeOfEdge;
        this.landings = landings;
        this.cost = cost;
        this.crossing = crossing;
    }

    /** A node that two different sides leave, and a leaf that is in one of them. */
    record Crossing(int node, int leaf) {}

    Cost cost() {
        return cost;
    }

    Optional<Crossing> findCrossing() {
        return crossing;
    }

    /**
     * A tree on the edges of the draft: edges of large grades first, none that closes a cycle. For needs by pairs it
     * weighs no more than the draft, because no pair is linked by less than before; for needs by sides it may weigh
     * more, or be no tree at all.
     */
    Optional<CoreTree> findTree() {
        int[] edges = gradeOfEdge.entrySet().stream()
                .sorted(Map.Entry.<Integer, Integer>comparingByValue(Comparator.reverseOrder())
                        .thenComparing(Map.Entry.comparingByKey()))
                .mapToInt(Map.Entry::getKey)
                .toArray();
        Classes pieces = new Classes(core.nodes());
        int[] forest = Arrays.stream(edges)
                .filter(edge -> pieces.join(core.edgeEnd(edge, 0), core.edgeEnd(edge, 1)))
                .toArray();
        return CoreTree.find(core, forest, landings);
    }
}
