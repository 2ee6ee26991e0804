package org.bondspan.solve;

import java.util.Arrays;

/**
 * A graph that shrinks. Between two nodes stays one stretch; a node where nothing lands goes when only one stretch ends
 * there (no tree that is worth anything goes there) or when two do (a tree takes both or none).
 */
final class Reducer {

    private final StretchPool pool;
    private final boolean[] landing;
    private final int[] head;
    private final int[] degree;
    private int[] next;
    private int[] end;
    private int[] stretch;
    private int size;
    private final int[] open;
    private final boolean[] listed;
    private int openCount;

    Reducer(boolean[] landing, StretchPool pool, int capacity) {
        this.pool = pool;
        this.landing = landing;
        int nodes = landing.length;
        head = new int[nodes];
        Arrays.fill(head, -1);
        degree = new int[nodes];
        open = new int[nodes];
        listed = new boolean[nodes];
        int room = Math.max(16, 2 * capacity);
        next = new int[room];
        end = new int[room];
        stretch = new int[room];
    }

    StretchPool pool() {
        return pool;
    }

    /** New numbers, in the same order, for the nodes that are left; -1 for those that are not. */
    int[] numbers() {
        int[] number = new int[head.length];
        int count = 0;
        for (int node = 0; node < number.length; node++) {
            number[node] = landing[node] || degree[node] > 0 ? count++ : -1;
        }
        return number;
    }

    int degree(int node) {
        return degree[node];
    }

    /** Number of stretch ends ever made, two for each stretch: 2s at its one node and 2s + 1 at its other. */
    int ends() {
        return size;
    }

    boolean isThere(int arc) {
        return stretch[arc] >= 0;
    }

    /** Node to which an arc leads. */
    int end(int arc) {
        return end[arc];
    }

    int stretch(int arc) {
        return stretch[arc];
    }

    /** Adds a stretch between two different nodes, whatever is there already. */
    void add(int a, int b, int newStretch) {
        if (size == next.length) {
            next = Arrays.copyOf(next, 2 * size);
            end = Arrays.copyOf(end, 2 * size);
            stretch = Arrays.copyOf(stretch, 2 * size);
        }
        link(a, b, newStretch);
        link(b, a, newStretch);
    }

    private void link(int from, int to, int newStretch) {
        next[size] = head[from];
        end[size] = to;
        stretch[size] = newStretch;
        head[from] = size++;
        degree[from]++;
    }

    private void remove(int arc) {
        degree[end[arc]]--;
        degree[end[arc ^ 1]]--;
        stretch[arc] = -1;
        stretch[arc ^ 1] = -1;
    }

    private void replace(int arc, int newStretch) {
        stretch[arc] = newStretch;
        stretch[arc ^ 1] = newStretch;
    }

    /** Leaves one stretch between any two nodes. */
    void mergeParallels() {
        int[] seen = new int[head.length];
        Arrays.fill(seen, -1);
        for (int node = 0; node < head.length; node++) {
            for (int arc = head[node]; arc >= 0; arc = next[arc]) {
                if (stretch[arc] < 0) {
                    continue;
                }
                int earlier = seen[end[arc]];
                if (earlier >= 0) {
                    replace(earlier, pool.parallel(stretch[earlier], stretch[arc]));
                    remove(arc);
                } else {
                    seen[end[arc]] = arc;
                }
            }
            for (int arc = head[node]; arc >= 0; arc = next[arc]) {
                seen[end[arc]] = -1;
            }
        }
    }

    /** Takes out nodes where nothing lands and no more than two stretches end. */
    void shrink() {
        for (int node = head.length - 1; node >= 0; node--) {
            open(node);
        }
        while (openCount > 0) {
            int node = open[--openCount];
            listed[node] = false;
            if (isSpare(node)) {
                takeOut(node);
            }
        }
    }

    private void takeOut(int node) {
        int one = firstArc(head[node]);
        if (degree[node] == 1) {
            remove(one);
            open(end[one]);
            return;
        }
        int other = firstArc(next[one]);
        bridge(one, other);
        open(end[one]);
        open(end[other]);
    }

    private void open(int node) {
        if (isSpare(node) && !listed[node]) {
            listed[node] = true;
            open[openCount++] = node;
        }
    }

    private boolean isSpare(int node) {
        return !landing[node] && (degree[node] == 1 || degree[node] == 2);
    }

    private int firstArc(int from) {
        int arc = from;
        while (stretch[arc] < 0) {
            arc = next[arc];
        }
        return arc;
    }

    private void bridge(int one, int other) {
        int a = end[one];
        int b = end[other];
        int joined = pool.series(stretch[one], stretch[other]);
        remove(one);
        remove(other);
        if (!pool.isUsable(joined)) {
            return;
        }
        int earlier = find(a, b);
        if (earlier >= 0) {
            replace(earlier, pool.parallel(stretch[earlier], joined));
        } else {
            add(a, b, joined);
        }
    }

    private int find(int a, int b) {
        int from = degree[a] <= degree[b] ? a : b;
        int to = from == a ? b : a;
        for (int arc = head[from]; arc >= 0; arc = next[arc]) {
            if (stretch[arc] >= 0 && end[arc] == to) {
                return arc;
            }
        }
        return -1;
    }
}
