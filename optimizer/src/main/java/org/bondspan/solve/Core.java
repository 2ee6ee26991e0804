package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * What is left of a problem to be searched: nodes (spots that matter), stretches between them by grade, and leaves to
 * be connected. Adjacency is in flat arrays: the arcs of node v are those from {@code firstArc(v)} to before
 * {@code firstArc(v + 1)}. Frozen.
 */
final class Core {

    private final List<Leaf> leaves;
    private final CoreNeed need;
    private final boolean[] metal;
    private final int[] origin;
    private final int[] firstArc;
    private final int[] arcEnd;
    private final int[] arcEdge;
    private final int[] edgeEnds;
    private final int[] stretchOf;
    private final int[] arcOf;
    private final int[] twin;
    private final int[] arcKind;
    private final long[][] weights;
    private final long[][] extents;
    /** By grade: the arcs that cannot meet it. */
    private final BitSet[] closed;

    private final int root;
    private final LandingIndex landings;
    private final long tapWeight;

    /** From a shrunk graph and leaves that land on nodes of it. */
    Core(Reducer graph, IntPredicate isMetal, CoreNeed need, List<Leaf> leaves, long tapWeight) {
        this.need = need;
        this.tapWeight = tapWeight;
        int[] number = graph.numbers();
        int nodes = (int) Arrays.stream(number).filter(node -> node >= 0).count();
        this.leaves = leaves.stream()
                .map(leaf -> leaf.renumbered(node -> number[node]))
                .toList();
        metal = new boolean[nodes];
        origin = new int[nodes];
        firstArc = new int[nodes + 1];
        for (int v = 0; v < number.length; v++) {
            if (number[v] >= 0) {
                origin[number[v]] = v;
                metal[number[v]] = isMetal.test(v);
                firstArc[number[v] + 1] = graph.degree(v);
            }
        }
        for (int v = 0; v < nodes; v++) {
            firstArc[v + 1] += firstArc[v];
        }
        int arcs = firstArc[nodes];
        arcEnd = new int[arcs];
        arcEdge = new int[arcs];
        edgeEnds = new int[arcs];
        arcKind = new int[arcs];
        stretchOf = new int[arcs / 2];
        arcOf = new int[arcs / 2];
        twin = new int[arcs];
        Kinds kinds = new Kinds(graph.pool());
        fill(graph, number, kinds);
        weights = new long[need.grades()][];
        Arrays.setAll(weights, kinds::weights);
        extents = new long[need.grades()][];
        Arrays.setAll(extents, kinds::extents);
        closed = new BitSet[need.grades()];
        Arrays.setAll(closed, this::findClosed);
        root = chooseRoot();
        landings = new LandingIndex(nodes, this.leaves);
    }

    private void fill(Reducer graph, int[] number, Kinds kinds) {
        int[] place = firstArc.clone();
        int edge = 0;
        for (int arc = 0; arc < graph.ends(); arc += 2) {
            if (!graph.isThere(arc)) {
                continue;
            }
            int a = number[graph.end(arc + 1)];
            int b = number[graph.end(arc)];
            edgeEnds[2 * edge] = a;
            edgeEnds[2 * edge + 1] = b;
            stretchOf[edge] = graph.stretch(arc);
            twin[place[a]] = place[b];
            twin[place[b]] = place[a];
            int kind = kinds.of(stretchOf[edge]);
            put(place[a]++, b, edge, kind);
            put(place[b]++, a, edge, kind);
            edge++;
        }
    }

    private void put(int arc, int end, int edge, int kind) {
        arcEnd[arc] = end;
        arcEdge[arc] = edge;
        arcOf[edge] = arc;
        arcKind[arc] = kind;
    }

    private BitSet findClosed(int grade) {
        BitSet arcs = new BitSet();
        for (int arc = 0; arc < arcKind.length; arc++) {
            if (weights[grade][arcKind[arc]] < 0) {
                arcs.set(arc);
            }
        }
        return arcs;
    }

    int nodes() {
        return metal.length;
    }

    int edges() {
        return stretchOf.length;
    }

    int leaves() {
        return leaves.size();
    }

    Leaf leaf(int leaf) {
        return leaves.get(leaf);
    }

    /** The leaf that needs most with the others: the search goes towards it. */
    int root() {
        return root;
    }

    /** The same core with the search going towards another leaf. */
    Core rootedAt(int leaf) {
        return leaf == root ? this : new Core(this, leaf);
    }

    private Core(Core same, int root) {
        leaves = same.leaves;
        need = same.need;
        metal = same.metal;
        origin = same.origin;
        firstArc = same.firstArc;
        arcEnd = same.arcEnd;
        arcEdge = same.arcEdge;
        edgeEnds = same.edgeEnds;
        stretchOf = same.stretchOf;
        arcOf = same.arcOf;
        twin = same.twin;
        arcKind = same.arcKind;
        weights = same.weights;
        extents = same.extents;
        closed = same.closed;
        landings = same.landings;
        tapWeight = same.tapWeight;
        this.root = root;
    }

    private int chooseRoot() {
        int best = 0;
        int most = -1;
        for (int root = 0; root < leaves.size(); root++) {
            int sum = 0;
            for (int leaf = 0; leaf < leaves.size(); leaf++) {
                sum += leaf == root ? 0 : need.floorOfPair(leaf, root);
            }
            if (sum > most) {
                best = root;
                most = sum;
            }
        }
        return best;
    }

    /** All leaves as one side, where sides are numbers. */
    long everything() {
        return (1L << leaves.size()) - 1;
    }

    LandingIndex landings() {
        return landings;
    }

    CoreNeed need() {
        return need;
    }

    /** 1 where a split makes a tap, 0 on metal. */
    int tap(int node) {
        return metal[node] ? 0 : 1;
    }

    /** What a split weighs. */
    long tapWeight(int node) {
        return metal[node] ? 0 : tapWeight;
    }

    /** What a tap weighs. */
    long tapWeight() {
        return tapWeight;
    }

    boolean isMetal(int node) {
        return metal[node];
    }

    /** Node of the graph that the core was made from. */
    int origin(int node) {
        return origin[node];
    }

    /** Stretch of the pool that an edge is. */
    int stretch(int edge) {
        return stretchOf[edge];
    }

    int edgeEnd(int edge, int which) {
        return edgeEnds[2 * edge + which];
    }

    /** One of the two arcs of an edge. */
    int arcOf(int edge) {
        return arcOf[edge];
    }

    /** The other arc of the same edge. */
    int twin(int arc) {
        return twin[arc];
    }

    /** Weight of an edge at a grade, below 0 where it cannot be met. */
    long edgeWeight(int edge, int grade) {
        return weights[grade][arcKind[arcOf[edge]]];
    }

    /** Extent of an edge at a grade, as in {@link Cost}. */
    long edgeExtent(int edge, int grade) {
        return extents[grade][arcKind[arcOf[edge]]];
    }

    /** Node from which an arc leads. */
    int arcStart(int arc) {
        return arcEnd[twin[arc]];
    }

    int firstArc(int node) {
        return firstArc[node];
    }

    int arcEnd(int arc) {
        return arcEnd[arc];
    }

    int arcEdge(int arc) {
        return arcEdge[arc];
    }

    /** Kind of an arc, as in {@link #weights} and {@link #extents}. */
    int kind(int arc) {
        return arcKind[arc];
    }

    /** Weights by kind of arc at a grade, below 0 where it cannot be met. The array is not to be changed. */
    long[] weights(int grade) {
        return weights[grade];
    }

    /** Arcs that cannot meet a grade. Not to be changed. */
    BitSet closed(int grade) {
        return closed[grade];
    }

    /** Extents by kind of arc at a grade, as in {@link Cost}. The array is not to be changed. */
    long[] extents(int grade) {
        return extents[grade];
    }
}
