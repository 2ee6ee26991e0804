package org.bondspan.solve;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** From a tree in the core back to edges and attachments of the problem, with the rank at which each is bought. */
final class TreeRebuild {

    private final RoutingProblem problem;
    private final Spots spots;
    private final int[] attachments;
    private final Set<Integer> edges = new HashSet<>();

    /** @param spotOfTerminal spot where each terminal lands */
    TreeRebuild(RoutingProblem problem, Spots spots, int[] spotOfTerminal) {
        this.problem = problem;
        this.spots = spots;
        Landings landings = new Landings(problem, spots);
        attachments = new int[spotOfTerminal.length];
        for (int t = 0; t < attachments.length; t++) {
            attachments[t] = landings.best(t, spotOfTerminal[t]);
        }
    }

    void add(int edge) {
        edges.add(edge);
    }

    /** The tree: the edges added, with what is needed of the free edges in the spots that they meet. */
    Tree tree() {
        int[] leafNode = new int[attachments.length];
        for (int t = 0; t < leafNode.length; t++) {
            leafNode[t] = problem.attachments(t).b(attachments[t]);
        }
        int[] all = withJoints(leafNode);
        int[] a = Arrays.stream(all).map(edge -> problem.edges().a(edge)).toArray();
        int[] b = Arrays.stream(all).map(edge -> problem.edges().b(edge)).toArray();
        TreeShape shape = new TreeShape(a, b, leafNode);
        int taps = shape.taps(node -> spots.isMetal(spots.of(node)));
        return bought(all, shape, taps);
    }

    private int[] withJoints(int[] leafNode) {
        Set<Integer> met = new HashSet<>();
        for (int node : leafNode) {
            met.add(spots.of(node));
        }
        for (int edge : edges) {
            met.add(spots.of(problem.edges().a(edge)));
            met.add(spots.of(problem.edges().b(edge)));
        }
        Set<Integer> all = new HashSet<>(edges);
        for (int joint : spots.joints()) {
            if (met.contains(spots.of(problem.edges().a(joint)))) {
                all.add(joint);
            }
        }
        return all.stream().mapToInt(Integer::intValue).sorted().toArray();
    }

    private Tree bought(int[] all, TreeShape shape, int taps) {
        int[] used = new int[all.length];
        int[] ranks = new int[all.length];
        int count = 0;
        Cost cost = Cost.of(taps * problem.tapWeight(), 0, taps);
        for (int i = 0; i < all.length; i++) {
            if (!shape.isUsed(i)) {
                continue;
            }
            int need = problem.need().rank(shape.behind(i));
            int tariff = problem.edges().tariff(all[i]);
            used[count] = all[i];
            ranks[count++] = problem.tariffs().bought(tariff, need);
            cost = cost.plus(problem.tariffs().cost(problem.edges().length(all[i]), tariff, need));
        }
        int[] attachmentRanks = new int[attachments.length];
        for (int t = 0; t < attachments.length; t++) {
            Links ways = problem.attachments(t);
            int need = problem.need().rankAround(t);
            int tariff = ways.tariff(attachments[t]);
            attachmentRanks[t] = problem.tariffs().bought(tariff, need);
            cost = cost.plus(problem.tariffs().cost(ways.length(attachments[t]), tariff, need));
        }
        return new Tree(
                Arrays.copyOf(used, count), Arrays.copyOf(ranks, count), attachments.clone(), attachmentRanks, cost);
    }
}
