package org.bondspan.solve;

import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Leaves out what no tree up to some weight can use: edges for which the lower bound and the tolls on the shortest way
 * from the root through the edge to a leaf together weigh more.
 */
final class Narrowing {

    private final Core core;
    private final Moats moats;
    private final long[] detours;

    Narrowing(Core core, Moats moats) {
        this.core = core;
        this.moats = moats;
        detours = moats.detours();
    }

    /** All that a tree of at most this weight can use. */
    SubCore part(long weight) {
        BitSet edges = new BitSet(core.edges());
        BitSet nodes = nodesForAll();
        for (int edge = 0; edge < core.edges(); edge++) {
            if (moats.lowerBound() + detours[edge] <= weight) {
                edges.set(edge);
                nodes.set(core.edgeEnd(edge, 0));
                nodes.set(core.edgeEnd(edge, 1));
            }
        }
        return SubCore.narrowed(core, edges, nodes);
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
