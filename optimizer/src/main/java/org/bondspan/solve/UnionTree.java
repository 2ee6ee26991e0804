package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A better tree out of several: a least draft in the union of their edges. Ways part at few places of the union, so
 * that finding it takes little time.
 */
final class UnionTree {

    private final Core core;
    private final StretchPool pool;

    UnionTree(Core core) {
        this.core = core;
        pool = new StretchPool(core.need().grades(), core.nodes());
    }

    /** A tree no worse than the best of those given, except that for needs by sides there may be none. */
    Optional<CoreTree> findTree(List<CoreTree> trees, Cost best) {
        Core union = union(trees);
        Bound bound = new Bound(union, new Distances(union), best);
        return new SubsetProgramme(union, true, Optional.of(bound), Restriction.none())
                .findDraft()
                .flatMap(Draft::findTree)
                .flatMap(tree -> findOriginal(union, tree));
    }

    private Core union(List<CoreTree> trees) {
        BitSet edges = new BitSet();
        BitSet nodes = new BitSet();
        for (CoreTree tree : trees) {
            for (int i = 0; i < tree.size(); i++) {
                edges.set(tree.edge(i));
                nodes.set(core.edgeEnd(tree.edge(i), 0));
                nodes.set(core.edgeEnd(tree.edge(i), 1));
            }
            for (int leaf = 0; leaf < core.leaves(); leaf++) {
                nodes.set(tree.landing(leaf));
            }
        }
        Reducer graph = new Reducer(landings(nodes), pool, edges.cardinality());
        edges.stream()
                .forEach(edge -> graph.add(core.edgeEnd(edge, 0), core.edgeEnd(edge, 1), pool.addEdge(core, edge)));
        graph.shrink();
        List<Leaf> leaves =
                IntStream.range(0, core.leaves()).mapToObj(core::leaf).toList();
        return new Core(graph, core::isMetal, core.need(), leaves);
    }

    private boolean[] landings(BitSet nodes) {
        boolean[] landing = new boolean[core.nodes()];
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            for (int i = 0; i < core.leaf(leaf).size(); i++) {
                landing[core.leaf(leaf).node(i)] = nodes.get(core.leaf(leaf).node(i));
            }
        }
        return landing;
    }

    private Optional<CoreTree> findOriginal(Core union, CoreTree tree) {
        IntStream.Builder edges = IntStream.builder();
        for (int i = 0; i < tree.size(); i++) {
            pool.forEachEdge(union.stretch(tree.edge(i)), tree.grade(i), edges::add);
        }
        int[] landings = new int[core.leaves()];
        Arrays.setAll(landings, leaf -> union.origin(tree.landing(leaf)));
        return CoreTree.find(core, edges.build().toArray(), landings);
    }
}
