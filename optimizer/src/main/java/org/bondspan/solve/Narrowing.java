package org.bondspan.solve;

import java.util.BitSet;
import java.util.stream.IntStream;

/**
 * Leaves out what no tree up to some weight can use: edges for which the lower bound and the tolls on the shortest way
 * from the root through the edge to a leaf together weigh more.
 */
final class Narrowing {

    private final Core core;
    private final BitSet edges = new BitSet();

    /** Nothing is left out yet. */
    Narrowing(Core core) {
        this.core = core;
        edges.set(0, core.edges());
    }

    /** Leaves out what no tree of at most this weight can use, by moats towards any root. */
    Narrowing leaveOutAbove(long weight, Moats moats) {
        long[] detours = moats.detours();
        for (int edge = edges.nextSetBit(0); edge >= 0; edge = edges.nextSetBit(edge + 1)) {
            if (moats.lowerBound() + detours[edge] > weight) {
                edges.clear(edge);
            }
        }
        return this;
    }

    /** What is left. */
    SubCore part() {
        BitSet nodes = nodesForAll();
        edges.stream().forEach(edge -> {
            nodes.set(core.edgeEnd(edge, 0));
            nodes.set(core.edgeEnd(edge, 1));
        });
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
