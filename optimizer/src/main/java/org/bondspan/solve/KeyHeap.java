package org.bondspan.solve;

import java.util.Arrays;

/**
 * Nodes by weight, then extent: a four-way heap on plain arrays, for shortest paths. A node may be in it more than
 * once; equal keys come out by node.
 */
public final class KeyHeap {
    private int size;
    private long[] weight = new long[64];
    private long[] extent = new long[64];
    private int[] node = new int[64];

    public boolean isEmpty() {
        return size == 0;
    }

    public void clear() {
        size = 0;
    }

    public long leastWeight() {
        return weight[0];
    }

    public long leastExtent() {
        return extent[0];
    }

    public int leastNode() {
        return node[0];
    }

    public void add(long w, long x, int v) {
        if (size == node.length) {
            weight = Arrays.copyOf(weight, 2 * size);
            extent = Arrays.copyOf(extent, 2 * size);
            node = Arrays.copyOf(node, 2 * size);
        }
        int at = size++;
        while (at > 0) {
            int up = (at - 1) >> 2;
            if (!isBefore(w, x, v, up)) {
                break;
            }
            move(up, at);
            at = up;
        }
        put(at, w, x, v);
    }

    public void removeLeast() {
        int last = --size;
        long w = weight[last];
        long x = extent[last];
        int v = node[last];
        int at = 0;
        while (true) {
            int least = 4 * at + 1;
            if (least >= last) {
                break;
            }
            int end = Math.min(least + 4, last);
            for (int child = least + 1; child < end; child++) {
                if (isBefore(weight[child], extent[child], node[child], least)) {
                    least = child;
                }
            }
            if (isBefore(w, x, v, least)) {
                break;
            }
            move(least, at);
            at = least;
        }
        put(at, w, x, v);
    }

    private boolean isBefore(long w, long x, int v, int at) {
        if (w != weight[at]) {
            return w < weight[at];
        }
        return x != extent[at] ? x < extent[at] : v < node[at];
    }

    private void move(int from, int to) {
        weight[to] = weight[from];
        extent[to] = extent[from];
        node[to] = node[from];
    }

    private void put(int at, long w, long x, int v) {
        weight[at] = w;
        extent[at] = x;
        node[at] = v;
    }
}
