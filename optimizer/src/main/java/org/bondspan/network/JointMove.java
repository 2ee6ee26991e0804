package org.bondspan.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.bondspan.units.WireSize;

/** Looks for a place that costs the same and lets the three runs of a joint bend less in all. */
final class JointMove {
    private final RouteProblem problem;
    private final Network network;
    private final CopperRuns runs;
    private final int joint;
    private final List<Run> meeting;
    private final Optional<EdgePrices> prices;
    private final long[] rates;

    JointMove(RouteProblem problem, CopperRuns runs, int joint, List<Run> meeting, Optional<EdgePrices> prices) {
        this.problem = problem;
        this.prices = prices;
        this.network = problem.network();
        this.runs = runs;
        this.joint = joint;
        this.meeting =
                meeting.stream().sorted(Comparator.comparingLong(this::rate)).toList();
        this.rates = this.meeting.stream().mapToLong(this::rate).toArray();
    }

    /**
     * Moves the joint where that takes out bends.
     *
     * @param ranks the rank of each edge of the tree; changed in place
     * @param treeNodes all nodes of the tree
     * @return whether it moved
     */
    boolean apply(Map<Integer, Integer> ranks, Set<Integer> treeNodes) {
        int bends = meeting.stream()
                .mapToInt(run -> Straightening.bends(run, network.arrays()))
                .sum();
        if (bends == 0) {
            return false;
        }
        Set<Integer> taken = new HashSet<>(treeNodes);
        meeting.forEach(run -> run.edges().forEach(edge -> {
            taken.remove(network.arrays().from(edge));
            taken.remove(network.arrays().to(edge));
        }));
        List<long[]> distances = distances(taken);
        List<Integer> candidates = candidates(distances);
        List<FewestBends> searches = new ArrayList<>();
        for (int i = 0; i < meeting.size(); i++) {
            Set<Integer> useful = backward(
                    candidates, distances.get(i), problem.size(meeting.get(i).rank()));
            searches.add(new FewestBends(
                    network,
                    runs,
                    end(meeting.get(i)),
                    problem.size(meeting.get(i).rank()),
                    useful::contains));
        }
        return moveToBest(candidates, searches, bends, ranks);
    }

    /**
     * From each of the three far ends, as far as all three together may go without weighing more than now: what was
     * spent so far counts, and the least that it takes to meet the other two ends. Where that least is not known: from
     * the lightest run's end as far as the weight of all three goes, then where its copper and the other's stay within
     * that weight. On the way to a place that costs the same this holds throughout, since a step back along the heavier
     * run saves at least what the lighter spends more.
     */
    private List<long[]> distances(Set<Integer> taken) {
        long weight = weight();
        List<long[]> distances = new ArrayList<>();
        for (int i = 0; i < meeting.size(); i++) {
            int coming = i;
            Run run = meeting.get(i);
            CopperRuns.Entry within =
                    (node, spent) -> weight(run, spent) + leastToMeet(coming, node) <= weight && !taken.contains(node);
            boolean alone = i == 0 || runs.apart().isKnown();
            distances.add(distances(run, alone ? within : besideLightest(run, distances.get(0), weight)));
        }
        return distances;
    }

    private CopperRuns.Entry besideLightest(Run run, long[] first, long weight) {
        return (node, spent) ->
                first[node] != CopperRuns.FAR && weight(run, spent) + weight(meeting.get(0), first[node]) <= weight;
    }

    private long[] distances(Run run, CopperRuns.Entry entry) {
        return runs.distances(end(run), problem.size(run.rank()), entry);
    }

    /** Least weight of joining the run of a number, which has come to a node, with the far ends of the other two. */
    private long leastToMeet(int coming, int node) {
        int[] ends = new int[meeting.size()];
        for (int i = 0; i < ends.length; i++) {
            ends[i] = i == coming ? node : end(meeting.get(i));
        }
        return runs.apart().leastWeight(ends, rates, problem.lengthUnit());
    }

    private boolean moveToBest(
            List<Integer> candidates, List<FewestBends> searches, int bends, Map<Integer, Integer> ranks) {
        int fewest = bends;
        List<List<Integer>> chosen = List.of();
        for (int candidate : candidates) {
            int sum = searches.stream()
                    .mapToInt(search -> search.findBends(candidate).orElse(bends))
                    .sum();
            if (sum < fewest) {
                List<List<Integer>> paths =
                        searches.stream().map(search -> search.path(candidate)).toList();
                if (areApart(paths, candidate) && areNoDearer(paths)) {
                    fewest = sum;
                    chosen = paths;
                }
            }
        }
        if (chosen.isEmpty()) {
            return false;
        }
        meeting.forEach(run -> run.edges().forEach(ranks::remove));
        for (int i = 0; i < meeting.size(); i++) {
            int rank = meeting.get(i).rank();
            chosen.get(i).forEach(edge -> ranks.put(edge, rank));
        }
        return true;
    }

    private boolean areNoDearer(List<List<Integer>> paths) {
        return prices.isEmpty()
                || IntStream.range(0, paths.size())
                        .allMatch(i -> prices.get().isNoDearer(meeting.get(i), paths.get(i)));
    }

    private int end(Run run) {
        return run.otherEnd(joint);
    }

    private long rate(Run run) {
        return problem.size(run.rank()).tenthPoundsPerThousandFeet();
    }

    /** Weight of so much copper of the run's size, in the solver's units: exact, since all lengths are multiples. */
    private long weight(Run run, long length) {
        return Math.multiplyExact(rate(run), length / problem.lengthUnit());
    }

    private long length(Run run) {
        return run.edges().stream()
                .mapToLong(edge -> runs.length(edge, problem.size(run.rank())))
                .sum();
    }

    private long weight() {
        return meeting.stream().mapToLong(run -> weight(run, length(run))).sum();
    }

    private long length() {
        return meeting.stream().mapToLong(this::length).sum();
    }

    /** Places where the three runs weigh and measure what they do now. */
    private List<Integer> candidates(List<long[]> distances) {
        long weight = weight();
        long length = length();
        List<Integer> candidates = new ArrayList<>();
        for (int node = 0; node < network.placeCount(); node++) {
            long weightHere = 0;
            long lengthHere = 0;
            for (int i = 0; i < distances.size(); i++) {
                long distance = distances.get(i)[node];
                if (distance == CopperRuns.FAR || weightHere > weight) {
                    weightHere = CopperRuns.FAR;
                    break;
                }
                weightHere += weight(meeting.get(i), distance);
                lengthHere += distance;
            }
            if (weightHere == weight && lengthHere == length) {
                candidates.add(node);
            }
        }
        return candidates;
    }

    /** All nodes on shortest runs to the candidates. */
    private Set<Integer> backward(List<Integer> candidates, long[] distance, WireSize size) {
        Set<Integer> useful = new HashSet<>(candidates);
        Deque<Integer> open = new ArrayDeque<>(candidates);
        while (!open.isEmpty()) {
            int node = open.remove();
            for (int i = runs.firstEdge(node); i < runs.endEdge(node); i++) {
                int edge = runs.edge(i);
                int before = runs.other(edge, node);
                boolean shortest = runs.takes(edge, size)
                        && distance[before] != CopperRuns.FAR
                        && distance[before] + runs.length(edge, size) == distance[node];
                if (shortest && useful.add(before)) {
                    open.add(before);
                }
            }
        }
        return useful;
    }

    private boolean areApart(List<List<Integer>> paths, int meetingPlace) {
        Set<Integer> nodes = new HashSet<>();
        int counted = 0;
        for (List<Integer> path : paths) {
            Set<Integer> own = new HashSet<>();
            path.forEach(edge -> {
                own.add(network.arrays().from(edge));
                own.add(network.arrays().to(edge));
            });
            own.remove(meetingPlace);
            nodes.addAll(own);
            counted += own.size();
        }
        return counted == nodes.size();
    }
}
