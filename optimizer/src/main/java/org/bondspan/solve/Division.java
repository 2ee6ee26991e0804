package org.bondspan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A core taken apart at nodes that every tree passes, into parts that can be searched one by one.
 *
 * <p>Why. Parts meet at single nodes, and a part where, or beyond which, fewer than two leaves can be told apart is no
 * part of any tree: what is left has leaves on either side of each node where parts meet. So a tree of the whole passes
 * all these nodes and falls into a tree of each part, and any trees of the parts make a tree together. What lies at a
 * node of a part or beyond it is one leaf to the part: an edge of the part has all of these leaves behind it or none,
 * and its need is the same, for any needs whatever. What lands at one node alone is paid in any case. At a node where m
 * parts meet and s leaves land that have no choice, each part has one conductor more than in the whole, its leaf there,
 * and counts two taps less than conductors: m + s - 2 taps are counted in no part, whatever the trees. So weight,
 * length and taps of a tree are those of its parts and {@link #beside}, and least trees of the parts make a least tree.
 */
final class Division {

    private final Core core;
    private final Pieces pieces;
    private final List<Part> parts;
    private final Cost beside;

    private record Part(SubCore sub, Pieces.Piece piece) {}

    private Division(Core core, Pieces pieces) {
        this.core = core;
        this.pieces = pieces;
        Map<Integer, BitSet> edges = new HashMap<>();
        for (int edge = 0; edge < core.edges(); edge++) {
            edges.computeIfAbsent(pieces.headOfEdge(edge), head -> new BitSet()).set(edge);
        }
        parts = pieces.passed().stream()
                .map(head -> part(pieces.piece(head), edges.getOrDefault(head, new BitSet())))
                .sorted(Comparator.comparingInt(part -> part.piece.leaves()))
                .toList();
        beside = measureBeside();
    }

    /** Parts with fewer leaves than the core, if it falls into such parts. */
    static Optional<Division> find(Core core) {
        Blocks blocks = new Blocks(core);
        if (!blocks.isInOnePiece()) {
            return Optional.empty();
        }
        Pieces pieces = new Pieces(core, blocks);
        return pieces.passed().stream().allMatch(head -> pieces.piece(head).leaves() < core.leaves())
                ? Optional.of(new Division(core, pieces))
                : Optional.empty();
    }

    private Part part(Pieces.Piece piece, BitSet edges) {
        List<BitSet> members = new ArrayList<>();
        List<Leaf> leaves = new ArrayList<>();
        piece.groups().forEach((node, group) -> {
            members.add(group);
            leaves.add(new Leaf(group, new int[] {node}, new Cost[] {Cost.NOTHING}));
        });
        piece.choosing().stream().forEach(leaf -> {
            BitSet alone = new BitSet();
            alone.set(leaf);
            members.add(alone);
            leaves.add(core.leaf(leaf));
        });
        return new Part(SubCore.of(core, edges, leaves, core.need().grouped(members)), piece);
    }

    private Cost measureBeside() {
        Cost sum = Cost.NOTHING;
        int[] meetings = new int[core.nodes()];
        for (Part part : parts) {
            part.piece.groups().keySet().forEach(node -> meetings[node]++);
        }
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            if (pieces.landsAlone(leaf)) {
                meetings[core.leaf(leaf).node(0)]++;
                sum = sum.plus(core.leaf(leaf).cost(0));
            }
        }
        for (int node = 0; node < meetings.length; node++) {
            if (meetings[node] > 2) {
                int taps = (meetings[node] - 2) * core.tap(node);
                sum = sum.plus(Cost.of(taps * core.tapWeight(), 0, taps));
            }
        }
        return sum;
    }

    /** The parts, those with few leaves first. */
    List<Core> cores() {
        return parts.stream().map(part -> part.sub.core()).toList();
    }

    /** What every tree costs beside its parts. */
    Cost beside() {
        return beside;
    }

    /**
     * The tree that trees of all parts make together.
     *
     * @param trees in the order of {@link #cores}
     */
    CoreTree join(List<CoreTree> trees) {
        IntStream.Builder edges = IntStream.builder();
        int[] landings = IntStream.range(0, core.leaves())
                .map(leaf -> core.leaf(leaf).node(0))
                .toArray();
        for (int i = 0; i < trees.size(); i++) {
            SubCore sub = parts.get(i).sub;
            CoreTree tree = trees.get(i);
            sub.forEachEdge(tree, edges::add);
            int next = parts.get(i).piece.groups().size();
            for (int leaf : parts.get(i).piece.choosing().stream().toArray()) {
                landings[leaf] = sub.landing(tree, next++);
            }
        }
        CoreTree joined = CoreTree.find(core, edges.build().toArray(), landings).orElseThrow();
        Cost sum = Stream.concat(Stream.of(beside), trees.stream().map(CoreTree::cost))
                .reduce(Cost.NOTHING, Cost::plus);
        if (!joined.cost().equals(sum)) {
            throw new IllegalStateException("parts cost " + sum + ", together " + joined.cost());
        }
        return joined;
    }
}
