package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A forest with leaves hung on nodes, seen from the first leaf: which leaves lie behind each edge. An edge with no leaf
 * behind it is not used. Linear but for sorting the nodes.
 */
final class TreeShape {

    private static final BitSet NONE = new BitSet();

    private final int[] nodes;
    private final int[] a;
    private final int[] b;
    private final int[] firstArc;
    private final int[] arcs;
    private final BitSet[] at;
    private final BitSet[] behind;
    private final int[] degree;
    private int reached;

    /**
     * @param a one end of each edge, any numbers
     * @param b the other end of each edge; the edges form no cycle
     * @param leafNode node of each leaf; at least one leaf
     */
    TreeShape(int[] a, int[] b, int[] leafNode) {
        nodes = Stream.of(a, b, leafNode)
                .flatMapToInt(IntStream::of)
                .sorted()
                .distinct()
                .toArray();
        this.a = places(a);
        this.b = places(b);
        firstArc = new int[nodes.length + 1];
        arcs = new int[2 * a.length];
        at = new BitSet[nodes.length];
        Arrays.fill(at, NONE);
        behind = new BitSet[a.length];
        Arrays.fill(behind, NONE);
        degree = new int[nodes.length];
        for (int leaf = 0; leaf < leafNode.length; leaf++) {
            int place = Arrays.binarySearch(nodes, leafNode[leaf]);
            BitSet alone = new BitSet();
            alone.set(leaf);
            at[place] = union(at[place], alone);
            degree[place]++;
        }
        sortArcs();
        gather(Arrays.binarySearch(nodes, leafNode[0]));
    }

    private int[] places(int[] ends) {
        return Arrays.stream(ends).map(end -> Arrays.binarySearch(nodes, end)).toArray();
    }

    private void sortArcs() {
        for (int e = 0; e < a.length; e++) {
            firstArc[a[e] + 1]++;
            firstArc[b[e] + 1]++;
        }
        for (int v = 0; v < nodes.length; v++) {
            firstArc[v + 1] += firstArc[v];
        }
        int[] place = firstArc.clone();
        for (int e = 0; e < a.length; e++) {
            arcs[place[a[e]]++] = e;
            arcs[place[b[e]]++] = e;
        }
    }

    private void gather(int start) {
        int[] order = new int[nodes.length];
        int[] edgeUp = new int[nodes.length];
        int count = 0;
        order[count++] = start;
        edgeUp[start] = -1;
        for (int i = 0; i < count; i++) {
            int node = order[i];
            for (int arc = firstArc[node]; arc < firstArc[node + 1]; arc++) {
                if (arcs[arc] != edgeUp[node]) {
                    int next = other(arcs[arc], node);
                    edgeUp[next] = arcs[arc];
                    order[count++] = next;
                }
            }
        }
        for (int i = count - 1; i > 0; i--) {
            int node = order[i];
            int edge = edgeUp[node];
            int up = other(edge, node);
            behind[edge] = at[node];
            at[up] = union(at[up], at[node]);
            if (!at[node].isEmpty()) {
                degree[node]++;
                degree[up]++;
            }
        }
        reached = at[start].cardinality();
    }

    /** Nodes with the same leaves behind them share one set. */
    private static BitSet union(BitSet one, BitSet other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() ? other : one;
        }
        BitSet both = (BitSet) one.clone();
        both.or(other);
        return both;
    }

    private int other(int edge, int node) {
        return a[edge] == node ? b[edge] : a[edge];
    }

    /** Number of leaves that hang in the same tree as the first. */
    int reached() {
        return reached;
    }

    /** Whether there are leaves behind an edge, seen from the first leaf. */
    boolean isUsed(int edge) {
        return !behind[edge].isEmpty();
    }

    /** Leaves behind an edge, seen from the first leaf; none when the edge is not used. Not to be changed. */
    BitSet behind(int edge) {
        return behind[edge];
    }

    /** Taps at nodes that are no metal: where k conductors meet, k - 2. */
    int taps(IntPredicate isMetal) {
        int taps = 0;
        for (int v = 0; v < nodes.length; v++) {
            if (degree[v] > 2 && !isMetal.test(nodes[v])) {
                taps += degree[v] - 2;
            }
        }
        return taps;
    }
}
