package org.bondspan.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.bondspan.solve.Tree;

/**
 * The tree that the solver chose.
 *
 * @param ranks the rank at which each edge of the network is bought
 * @param attachments the attachment chosen for each terminal
 * @param attachmentRanks the rank at which it is bought
 */
record ChosenTree(Map<Integer, Integer> ranks, List<Integer> attachments, List<Integer> attachmentRanks) {
    ChosenTree {
        ranks = Map.copyOf(ranks);
        attachments = List.copyOf(attachments);
        attachmentRanks = List.copyOf(attachmentRanks);
    }

    static ChosenTree of(Tree tree, int terminals) {
        Map<Integer, Integer> ranks = new HashMap<>();
        for (int i = 0; i < tree.edgeCount(); i++) {
            ranks.put(tree.edge(i), tree.edgeRank(i));
        }
        return new ChosenTree(
                ranks,
                IntStream.range(0, terminals).mapToObj(tree::attachment).toList(),
                IntStream.range(0, terminals).mapToObj(tree::attachmentRank).toList());
    }
}
