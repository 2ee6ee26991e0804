package org.bondspan.solve;

import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Leaves out what no tree up to some weight can use: edges for which the lower bound and the tolls on the shortest way
 * from the root through the edge to a leaf together weigh more, by moats towards any root.
 */
final class Narrowing {

    private final Core core;
    /** By edge: a tree that uses it weighs at least so much. */
    private final long[] least;

    /** Nothing is known yet. */
    Narrowing(Core core) {
        this.core = core;
        least = new long[core.edges()];
    }

    /** Takes what some moats say into account. */
    Narrowing by(Moats moats) {
        long[] detours = moats.detours();
        for (int edge = 0; edge < least.length; edge++) {
            least[edge] = Math.max(least[edge], moats.lowerBound() + detours[edge]);
        }
        return this;
    }

    /** All that a tree of at most this weight can use, with the search going towards a leaf. */
    SubCore part(long weight, int root) {
        BitSet edges = new BitSet(core.edges());
        BitSet nodes = nodesForAll();
        for (int edge = 0; edge < least.length; edge++) {
            if (least[edge] <= weight) {
                edges.set(edge);
                nodes.set(core.edgeEnd(edge, 0));
                nodes.set(core.edgeEnd(edge, 1));
            }
        }
        return SubCore.narrowed(core.rootedAt(root), edges, nodes);
    }

    /** Nodes where a tree without edges is possible. */
    private BitSet nodesForAll() {
        BitSet nodes = new BitSet();
        IntStream.range(0, core.nodes())
                .filter(node -> core.landings().count(node) == core.leaves())
                .forEach(nodes::set);
        return nodes;
    }
}
