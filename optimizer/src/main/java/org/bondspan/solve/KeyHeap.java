package org.bondspan.solve;

import java.util.Arrays;

/**
 * Nodes by weight, then extent, for shortest paths: a radix heap. A node may be in it more than once. Equal keys come
 * out in an order that depends on nothing but the calls.
 *
 * <p>An entry lies in the bucket of the highest bit in which its key differs from the last key that came out; so all of
 * a lower bucket come before any of a higher one, and bucket 0 holds those that are equal to it. When bucket 0 is empty
 * the least of the next bucket becomes the last key, and its entries go to lower buckets. Keys below the last one are
 * allowed, but everything is put in order anew. (Ahuja, Mehlhorn, Orlin and Tarjan, "Faster algorithms for the shortest
 * path problem", Journal of the ACM 37(2), 1990, from memory.)
 */
public final class KeyHeap {

    private static final int NONE = -1;
    private static final int BITS = 64;

    private final int[] first = new int[1 + 2 * BITS];
    private long weightBuckets;
    private long extentBuckets;
    private long lastWeight;
    private long lastExtent;
    private int size;
    private int used;
    private int spare = NONE;
    private long[] weight = new long[64];
    private long[] extent = new long[64];
    private int[] node = new int[64];
    private int[] next = new int[64];

    public KeyHeap() {
        Arrays.fill(first, NONE);
    }

    public boolean isEmpty() {
        return size == 0;
    }

    public void clear() {
        Arrays.fill(first, NONE);
        weightBuckets = 0;
        extentBuckets = 0;
        lastWeight = 0;
        lastExtent = 0;
        size = 0;
        used = 0;
        spare = NONE;
    }

    public long leastWeight() {
        prepare();
        return lastWeight;
    }

    public long leastExtent() {
        prepare();
        return lastExtent;
    }

    public int leastNode() {
        prepare();
        return node[first[0]];
    }

    public void add(long w, long x, int v) {
        if (w < lastWeight || (w == lastWeight && x < lastExtent)) {
            goBack(w, x);
        }
        int at = spare;
        if (at >= 0) {
            spare = next[at];
        } else {
            at = used++;
            if (at == node.length) {
                grow();
            }
        }
        weight[at] = w;
        extent[at] = x;
        node[at] = v;
        put(at);
        size++;
    }

    private void grow() {
        weight = Arrays.copyOf(weight, 2 * weight.length);
        extent = Arrays.copyOf(extent, weight.length);
        node = Arrays.copyOf(node, weight.length);
        next = Arrays.copyOf(next, weight.length);
    }

    public void removeLeast() {
        prepare();
        int at = first[0];
        first[0] = next[at];
        next[at] = spare;
        spare = at;
        size--;
    }

    private void put(int at) {
        int bucket = 0;
        long byWeight = weight[at] ^ lastWeight;
        if (byWeight != 0) {
            int bit = BITS - 1 - Long.numberOfLeadingZeros(byWeight);
            weightBuckets |= 1L << bit;
            bucket = 1 + BITS + bit;
        } else {
            long byExtent = extent[at] ^ lastExtent;
            if (byExtent != 0) {
                int bit = BITS - 1 - Long.numberOfLeadingZeros(byExtent);
                extentBuckets |= 1L << bit;
                bucket = 1 + bit;
            }
        }
        next[at] = first[bucket];
        first[bucket] = at;
    }

    /** Sees to it that bucket 0 holds the least entries. */
    private void prepare() {
        if (first[0] >= 0) {
            return;
        }
        int from;
        if (extentBuckets != 0) {
            from = takeBucket(1 + Long.numberOfTrailingZeros(extentBuckets));
            extentBuckets &= extentBuckets - 1;
        } else {
            from = takeBucket(1 + BITS + Long.numberOfTrailingZeros(weightBuckets));
            weightBuckets &= weightBuckets - 1;
        }
        int least = from;
        for (int at = next[from]; at >= 0; at = next[at]) {
            if (weight[at] < weight[least] || (weight[at] == weight[least] && extent[at] < extent[least])) {
                least = at;
            }
        }
        lastWeight = weight[least];
        lastExtent = extent[least];
        putAll(from);
    }

    private int takeBucket(int bucket) {
        int from = first[bucket];
        first[bucket] = NONE;
        return from;
    }

    private void putAll(int from) {
        int at = from;
        while (at >= 0) {
            int following = next[at];
            put(at);
            at = following;
        }
    }

    private void goBack(long w, long x) {
        int[] lists = first.clone();
        Arrays.fill(first, NONE);
        weightBuckets = 0;
        extentBuckets = 0;
        lastWeight = w;
        lastExtent = x;
        for (int from : lists) {
            putAll(from);
        }
    }
}
