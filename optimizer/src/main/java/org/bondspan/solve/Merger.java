package org.bondspan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Makes one tree of two: the best on the edges of both, found by the exact search. Where the two agree, all trees pass
 * the same nodes, so what has to be searched are the places where they differ; see {@link Division}. (Merging good
 * solutions: Pajor, Uchoa and Werneck, "A robust and scalable algorithm for the Steiner problem in graphs",
 * Mathematical Programming Computation 10, 2018, from memory.)
 */
final class Merger {

    private static final long WORK_OF_A_PART = 400_000;

    private final Core core;
    private final Meter meter;

    Merger(Core core, Meter meter) {
        this.core = core;
        this.meter = meter;
    }

    /** The best tree on the edges of two, unless that takes too long. */
    Optional<CoreTree> merge(CoreTree one, CoreTree other) {
        BitSet edges = new BitSet();
        BitSet nodes = new BitSet();
        for (CoreTree tree : List.of(one, other)) {
            IntStream.range(0, tree.size()).map(tree::edge).forEach(edge -> {
                edges.set(edge);
                nodes.set(core.edgeEnd(edge, 0));
                nodes.set(core.edgeEnd(edge, 1));
            });
            IntStream.range(0, core.leaves()).map(tree::landing).forEach(nodes::set);
        }
        SubCore both = SubCore.narrowed(core, edges, nodes);
        return findTree(both.core()).flatMap(both::findInWhole);
    }

    private Optional<CoreTree> findTree(Core both) {
        Optional<Division> division = Division.find(both);
        List<CoreTree> trees = new ArrayList<>();
        for (Core part : division.map(Division::cores).orElse(List.of(both))) {
            Optional<CoreTree> tree = findLeast(part);
            if (tree.isEmpty()) {
                return Optional.empty();
            }
            trees.add(tree.orElseThrow());
        }
        return Optional.of(division.map(found -> found.join(trees)).orElseGet(() -> trees.get(0)));
    }

    private Optional<CoreTree> findLeast(Core part) {
        if (!part.need().isNarrow()) {
            return Optional.empty();
        }
        Meter allowed = meter.forPart(WORK_OF_A_PART);
        try {
            return new LeastTreeSearch(part, Shortcuts.ALL, allowed, Optional.empty()).findTree();
        } catch (SpentException spent) {
            return Optional.empty();
        }
    }
}
