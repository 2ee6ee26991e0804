package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A part of a core, shrunk to a core of its own, and the way back. */
final class SubCore {

    private final Core whole;
    private final StretchPool pool;
    private final Core part;

    /**
     * @param edges edges of the whole that are in the part
     * @param landings nodes where leaves may land, as far as they may in the whole
     */
    SubCore(Core whole, BitSet edges, BitSet landings) {
        this.whole = whole;
        pool = new StretchPool(whole.need().grades(), 2 * edges.cardinality());
        boolean[] landing = new boolean[whole.nodes()];
        List<Leaf> leaves =
                IntStream.range(0, whole.leaves()).mapToObj(whole::leaf).toList();
        for (Leaf leaf : leaves) {
            for (int i = 0; i < leaf.size(); i++) {
                landing[leaf.node(i)] = landings.get(leaf.node(i));
            }
        }
        Reducer graph = new Reducer(landing, pool, edges.cardinality());
        for (int edge = edges.nextSetBit(0); edge >= 0; edge = edges.nextSetBit(edge + 1)) {
            graph.add(whole.edgeEnd(edge, 0), whole.edgeEnd(edge, 1), pool.addEdge(whole, edge));
        }
        graph.shrink();
        part = new Core(graph, whole::isMetal, whole.need(), leaves, whole.tapWeight()).rootedAt(whole.root());
    }

    Core core() {
        return part;
    }

    /** The same tree in the whole. */
    Optional<CoreTree> findInWhole(CoreTree tree) {
        IntStream.Builder edges = IntStream.builder();
        for (int i = 0; i < tree.size(); i++) {
            pool.forEachEdge(part.stretch(tree.edge(i)), tree.grade(i), edges::add);
        }
        int[] landings = new int[part.leaves()];
        Arrays.setAll(landings, leaf -> part.origin(tree.landing(leaf)));
        return CoreTree.find(whole, edges.build().toArray(), landings);
    }
}
