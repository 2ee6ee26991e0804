package org.bondspan.solve;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Blocks put together so that every leaf lands inside one piece, or at one node alone, and the leaves as each piece
 * sees them: all that lie at one of its nodes or beyond it are one leaf. Blocks in a row with two leaves each, between
 * which nothing branches off, are one piece, so there are no more than about two pieces for each leaf.
 */
final class Pieces {

    private static final int NONE = -1;

    private final Core core;
    private final Blocks blocks;
    private final Classes classes;
    private final int[] blockOfLeaf;
    /** By the number of the first block; none where no leaf lands in the piece or beyond it. */
    private Piece[] pieces = new Piece[0];

    /** Some blocks and the leaves that they see. */
    static final class Piece {
        /** Leaves that land in the piece or beyond it, seen from node 0. */
        private final BitSet here = new BitSet();

        private final BitSet choosing = new BitSet();
        private final Map<Integer, BitSet> groups = new TreeMap<>();

        private void add(int node, BitSet leaves) {
            here.or(leaves);
            groups.computeIfAbsent(node, ignored -> new BitSet()).or(leaves);
        }

        /** Number of leaves, as the piece sees them. */
        int leaves() {
            return choosing.cardinality() + groups.size();
        }

        /** Leaves with a choice of nodes of the piece; not to be changed. */
        BitSet choosing() {
            return choosing;
        }

        /** By node: leaves that land there alone or lie beyond; not to be changed. */
        Map<Integer, BitSet> groups() {
            return groups;
        }
    }

    Pieces(Core core, Blocks blocks) {
        this.core = core;
        this.blocks = blocks;
        classes = new Classes(blocks.count());
        blockOfLeaf = IntStream.range(0, core.leaves()).map(this::joinLandings).toArray();
        gather();
        joinRows();
        gather();
    }

    /** The pieces that every tree passes, by first block. */
    List<Integer> passed() {
        return IntStream.range(0, pieces.length)
                .filter(head -> pieces[head] != null && pieces[head].leaves() > 1)
                .boxed()
                .toList();
    }

    Piece piece(int head) {
        return pieces[head];
    }

    /** First block of the piece in which an edge lies. */
    int headOfEdge(int edge) {
        return classes.find(blocks.ofEdge(edge));
    }

    /** Whether a leaf lands at one node alone. */
    boolean landsAlone(int leaf) {
        return blockOfLeaf[leaf] < 0;
    }

    /** Puts the blocks between the landings of a leaf together; returns one of them, -1 where it has no choice. */
    private int joinLandings(int number) {
        Leaf leaf = core.leaf(number);
        int block = NONE;
        for (int i = 1; i < leaf.size(); i++) {
            block = joinWay(leaf.node(i - 1), leaf.node(i), block);
        }
        return block;
    }

    /**
     * Goes up from two nodes until they meet: of two pieces the one with the larger number lies farther down.
     *
     * @param with a block to be in the same piece, if any; returned, or one on the way
     */
    private int joinWay(int one, int other, int with) {
        int a = one;
        int b = other;
        int joined = with;
        while (a != b) {
            int lower = Math.max(above(a), above(b));
            int nextA = above(a) == lower ? blocks.top(lower) : a;
            b = above(b) == lower ? blocks.top(lower) : b;
            a = nextA;
            joined = joined < 0 ? lower : joined;
            classes.join(joined, lower);
        }
        return joined;
    }

    /** The piece through which ways from node 0 come to a node; -1 for node 0. */
    private int above(int node) {
        return blocks.up(node) < 0 ? NONE : classes.find(blocks.up(node));
    }

    private void gather() {
        pieces = new Piece[blocks.count()];
        for (int leaf = 0; leaf < blockOfLeaf.length; leaf++) {
            if (blockOfLeaf[leaf] < 0) {
                BitSet alone = new BitSet();
                alone.set(leaf);
                add(core.leaf(leaf).node(0), alone);
            } else {
                Piece piece = make(classes.find(blockOfLeaf[leaf]));
                piece.choosing.set(leaf);
                piece.here.set(leaf);
            }
        }
        for (int head = pieces.length - 1; head >= 0; head--) {
            if (pieces[head] != null) {
                add(blocks.top(head), pieces[head].here);
                addTheRest(head);
            }
        }
    }

    private Piece make(int head) {
        if (pieces[head] == null) {
            pieces[head] = new Piece();
        }
        return pieces[head];
    }

    private void add(int node, BitSet leaves) {
        if (above(node) >= 0) {
            make(above(node)).add(node, leaves);
        }
    }

    /** What does not lie in a piece or beyond it lies at its top or beyond that. */
    private void addTheRest(int head) {
        BitSet rest = new BitSet();
        rest.set(0, core.leaves());
        rest.andNot(pieces[head].here);
        if (!rest.isEmpty()) {
            pieces[head].groups.put(blocks.top(head), rest);
        }
    }

    private void joinRows() {
        for (int head = pieces.length - 1; head > 0; head--) {
            int before = pieces[head] == null ? NONE : above(blocks.top(head));
            if (before >= 0
                    && pieces[head].leaves() == 2
                    && pieces[before].leaves() == 2
                    && pieces[head].here.equals(pieces[before].groups.get(blocks.top(head)))) {
                classes.join(before, head);
            }
        }
    }
}
