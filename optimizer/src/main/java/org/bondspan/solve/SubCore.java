package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** A part of a core, shrunk to a core of its own, and the way back. */
final class SubCore {

    private final Core whole;
    private final StretchPool pool;
    private final Core part;

    private SubCore(Core whole, StretchPool pool, Core part) {
        this.whole = whole;
        this.pool = pool;
        this.part = part;
    }

    /**
     * A part with leaves of its own.
     *
     * @param edges edges of the whole that are in the part
     * @param leaves on nodes of the whole
     * @param need of these leaves, at the grades of the whole
     */
    static SubCore of(Core whole, BitSet edges, List<Leaf> leaves, CoreNeed need) {
        StretchPool pool = new StretchPool(need.grades(), 2 * edges.cardinality());
        boolean[] landing = new boolean[whole.nodes()];
        for (Leaf leaf : leaves) {
            for (int i = 0; i < leaf.size(); i++) {
                landing[leaf.node(i)] = true;
            }
        }
        Reducer graph = new Reducer(landing, pool, edges.cardinality());
        for (int edge = edges.nextSetBit(0); edge >= 0; edge = edges.nextSetBit(edge + 1)) {
            graph.add(whole.edgeEnd(edge, 0), whole.edgeEnd(edge, 1), pool.addEdge(whole, edge));
        }
        graph.shrink();
        return new SubCore(whole, pool, new Core(graph, whole::isMetal, need, leaves, whole.tapWeight()));
    }

    /**
     * A part with all leaves and the root of the whole.
     *
     * @param edges edges of the whole that are in the part
     * @param landings nodes where leaves may land, as far as they may in the whole
     */
    static SubCore narrowed(Core whole, BitSet edges, BitSet landings) {
        List<Leaf> leaves = IntStream.range(0, whole.leaves())
                .mapToObj(leaf -> whole.leaf(leaf).renumbered(node -> landings.get(node) ? node : -1))
                .toList();
        SubCore part = of(whole, edges, leaves, whole.need());
        return new SubCore(whole, part.pool, part.part.rootedAt(whole.root()));
    }

    Core core() {
        return part;
    }

    /** Tells the edges of the whole that a tree in the part goes along. */
    void forEachEdge(CoreTree tree, IntConsumer action) {
        for (int i = 0; i < tree.size(); i++) {
            pool.forEachEdge(part.stretch(tree.edge(i)), tree.grade(i), action);
        }
    }

    /** Node of the whole on which a leaf of a tree in the part lands. */
    int landing(CoreTree tree, int leaf) {
        return part.origin(tree.landing(leaf));
    }

    /** The same tree in the whole, where the part has all leaves. */
    Optional<CoreTree> findInWhole(CoreTree tree) {
        IntStream.Builder edges = IntStream.builder();
        forEachEdge(tree, edges::add);
        int[] landings = new int[part.leaves()];
        Arrays.setAll(landings, leaf -> landing(tree, leaf));
        return CoreTree.find(whole, edges.build().toArray(), landings);
    }
}
