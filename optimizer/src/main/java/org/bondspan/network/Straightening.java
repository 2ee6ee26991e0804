package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.WireSize;

/**
 * Takes out every bend that costs nothing to remove. Run by run, it looks among the runs of the same length between the
 * same two ends for the one with the fewest bends; joint by joint, it looks for another place that costs the same and
 * lets the three runs that meet there bend less. The weight and length of the tree never change; so it may end at any
 * time, with bends left that could go.
 */
final class Straightening {
    private static final int MOST_ROUNDS = 4;

    private final RouteProblem problem;
    private final Network network;
    private final CopperRuns runs;
    private final Optional<EdgePrices> prices;
    private final BooleanSupplier isOver;

    /**
     * @param prices where what a run costs depends on more than its length: it is only moved where it costs no more
     * @param isOver asked before each run and joint; true ends it
     */
    Straightening(RouteProblem problem, Optional<EdgePrices> prices, BooleanSupplier isOver) {
        this.isOver = isOver;
        this.problem = problem;
        this.prices = prices;
        this.network = problem.network();
        this.runs = new CopperRuns(network);
    }

    ChosenTree straighten(ChosenTree chosen) {
        Map<Integer, Integer> ranks = new TreeMap<>(chosen.ranks());
        boolean changed = true;
        for (int round = 0; round < MOST_ROUNDS && changed; round++) {
            changed = straightenRuns(ranks, chosen.attachments());
            changed |= moveJoints(ranks, chosen.attachments());
        }
        return new ChosenTree(ranks, chosen.attachments(), chosen.attachmentRanks());
    }

    private boolean straightenRuns(Map<Integer, Integer> ranks, List<Integer> attachments) {
        boolean changed = false;
        for (Run run : new TreeRuns(problem, ranks, attachments).list()) {
            if (isOver.getAsBoolean()) {
                return false;
            }
            Set<Integer> taken = nodes(ranks);
            run.edges().forEach(edge -> taken.removeAll(List.of(arrays().from(edge), arrays().to(edge))));
            taken.remove(run.from());
            taken.remove(run.to());
            changed |= bends(run) > fewestPossible(run) && straighten(run, taken, ranks);
        }
        return changed;
    }

    private boolean straighten(Run run, Set<Integer> taken, Map<Integer, Integer> ranks) {
        WireSize size = problem.size(run.rank());
        long length = length(run);
        long[] out = runs.distances(
                run.from(),
                size,
                (node, spent) -> spent + runs.apart().between(node, run.to()) <= length && !taken.contains(node));
        long[] home = runs.distances(
                run.to(), size, (node, spent) -> out[node] != CopperRuns.FAR && out[node] + spent == length);
        FewestBends search =
                new FewestBends(network, runs, run.from(), size, node -> isOnWay(out[node], home[node], length));
        boolean better =
                search.findBends(run.to()).map(bends -> bends < bends(run)).orElse(false);
        if (better && search.length(run.to()) == length && isNoDearer(run, search.path(run.to()))) {
            run.edges().forEach(ranks::remove);
            search.path(run.to()).forEach(edge -> ranks.put(edge, run.rank()));
            return true;
        }
        return false;
    }

    private boolean isNoDearer(Run run, List<Integer> edges) {
        return prices.map(price -> price.isNoDearer(run, edges)).orElse(true);
    }

    /** Bends that any run between the same two places has: one less than the directions in which they lie apart. */
    private int fewestPossible(Run run) {
        if (network.isMetal(run.from()) || network.isMetal(run.to())) {
            return 0;
        }
        PlanPoint from = arrays().at(run.from());
        PlanPoint to = arrays().at(run.to());
        int apart = (from.x() == to.x() ? 0 : 1)
                + (from.y() == to.y() ? 0 : 1)
                + (arrays().elevation(run.from()) == arrays().elevation(run.to()) ? 0 : 1);
        return Math.max(0, apart - 1);
    }

    private static boolean isOnWay(long out, long home, long length) {
        return out != CopperRuns.FAR && home != CopperRuns.FAR && out + home == length;
    }

    private boolean moveJoints(Map<Integer, Integer> ranks, List<Integer> attachments) {
        boolean changed = false;
        List<Run> list = new TreeRuns(problem, ranks, attachments).list();
        Map<Integer, List<Run>> byEnd = new TreeMap<>();
        for (Run run : list) {
            byEnd.computeIfAbsent(run.from(), ignored -> new ArrayList<>()).add(run);
            byEnd.computeIfAbsent(run.to(), ignored -> new ArrayList<>()).add(run);
        }
        TreeRuns degrees = new TreeRuns(problem, ranks, attachments);
        for (Map.Entry<Integer, List<Run>> joint : byEnd.entrySet()) {
            boolean movable = !isOver.getAsBoolean()
                    && !network.isMetal(joint.getKey())
                    && joint.getValue().size() == 3
                    && degrees.degree(joint.getKey()) == 3;
            if (movable && ranks.keySet().containsAll(allEdges(joint.getValue()))) {
                changed |= new JointMove(problem, runs, joint.getKey(), joint.getValue(), prices)
                        .apply(ranks, nodes(ranks));
            }
        }
        return changed;
    }

    private static Set<Integer> allEdges(List<Run> meeting) {
        Set<Integer> edges = new HashSet<>();
        meeting.forEach(run -> edges.addAll(run.edges()));
        return edges;
    }

    private NetworkArrays arrays() {
        return network.arrays();
    }

    private Set<Integer> nodes(Map<Integer, Integer> ranks) {
        Set<Integer> nodes = new HashSet<>();
        ranks.keySet().forEach(edge -> {
            nodes.add(arrays().from(edge));
            nodes.add(arrays().to(edge));
        });
        return nodes;
    }

    private long length(Run run) {
        return run.edges().stream()
                .mapToLong(edge -> runs.length(edge, problem.size(run.rank())))
                .sum();
    }

    private int bends(Run run) {
        return bends(run, arrays());
    }

    /** Changes of direction along a run. */
    static int bends(Run run, NetworkArrays arrays) {
        int bends = 0;
        int before = Direction.NONE;
        for (int edge : run.edges()) {
            if (arrays.direction(edge) == Direction.NONE || arrays.length(edge) == 0) {
                continue;
            }
            if (before != Direction.NONE && arrays.direction(edge) != before) {
                bends++;
            }
            before = arrays.direction(edge);
        }
        return bends;
    }
}
