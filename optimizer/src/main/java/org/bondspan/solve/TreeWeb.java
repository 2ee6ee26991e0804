package org.bondspan.solve;

import java.util.Arrays;

/** A tree in the core by its nodes: edges and leaves at each. Frozen. */
final class TreeWeb {

    private final Core core;
    private final CoreTree tree;
    private final int[] placeOf;
    private final int[] nodes;
    private final int[] firstEdge;
    private final int[] edgesAt;
    private final int[] firstLeaf;
    private final int[] leavesAt;

    /** @param placeOf scratch, by node of the core, all -1; {@link #clear} makes it so again */
    TreeWeb(Core core, CoreTree tree, int[] placeOf) {
        this.core = core;
        this.tree = tree;
        this.placeOf = placeOf;
        int[] met = new int[2 * tree.size() + core.leaves()];
        int count = 0;
        for (int i = 0; i < tree.size(); i++) {
            for (int which = 0; which < 2; which++) {
                count = meet(core.edgeEnd(tree.edge(i), which), met, count);
            }
        }
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            count = meet(tree.landing(leaf), met, count);
        }
        nodes = Arrays.copyOf(met, count);
        firstEdge = new int[count + 1];
        edgesAt = new int[2 * tree.size()];
        firstLeaf = new int[count + 1];
        leavesAt = new int[core.leaves()];
        sort();
    }

    private int meet(int node, int[] met, int count) {
        if (placeOf[node] >= 0) {
            return count;
        }
        placeOf[node] = count;
        met[count] = node;
        return count + 1;
    }

    private void sort() {
        for (int i = 0; i < tree.size(); i++) {
            firstEdge[end(i, 0) + 1]++;
            firstEdge[end(i, 1) + 1]++;
        }
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            firstLeaf[placeOf[tree.landing(leaf)] + 1]++;
        }
        for (int v = 0; v < nodes.length; v++) {
            firstEdge[v + 1] += firstEdge[v];
            firstLeaf[v + 1] += firstLeaf[v];
        }
        int[] at = firstEdge.clone();
        for (int i = 0; i < tree.size(); i++) {
            edgesAt[at[end(i, 0)]++] = i;
            edgesAt[at[end(i, 1)]++] = i;
        }
        at = firstLeaf.clone();
        for (int leaf = 0; leaf < core.leaves(); leaf++) {
            leavesAt[at[placeOf[tree.landing(leaf)]]++] = leaf;
        }
    }

    void clear() {
        for (int node : nodes) {
            placeOf[node] = -1;
        }
    }

    CoreTree tree() {
        return tree;
    }

    /** Number of nodes; places are numbered from 0. */
    int size() {
        return nodes.length;
    }

    /** Node of the core at a place. */
    int node(int place) {
        return nodes[place];
    }

    /** Place of one end of the i-th edge of the tree. */
    int end(int i, int which) {
        return placeOf[core.edgeEnd(tree.edge(i), which)];
    }

    /** Place at the other end of the i-th edge of the tree. */
    int other(int i, int place) {
        int end = end(i, 0);
        return end == place ? end(i, 1) : end;
    }

    int edgeCount(int place) {
        return firstEdge[place + 1] - firstEdge[place];
    }

    /** Which edge of the tree is the i-th at a place. */
    int edge(int place, int i) {
        return edgesAt[firstEdge[place] + i];
    }

    int leafCount(int place) {
        return firstLeaf[place + 1] - firstLeaf[place];
    }

    int leaf(int place, int i) {
        return leavesAt[firstLeaf[place] + i];
    }

    /** Whether the tree does more at a place than pass. */
    boolean isKey(int place) {
        return edgeCount(place) != 2 || leafCount(place) > 0;
    }
}
