package org.bondspan.solve;

import java.util.Arrays;
import java.util.BitSet;

/** Groups of leaves, at first each by itself, of which one may wait for another; those in a circle become one group. */
final class Waiting {

    private static final int NOTHING = -1;

    private final Classes heads;
    private final BitSet[] group;
    private final int[] waitsFor;

    Waiting(int leaves) {
        heads = new Classes(leaves);
        group = new BitSet[leaves];
        Arrays.setAll(group, Waiting::alone);
        waitsFor = new int[leaves];
        Arrays.fill(waitsFor, NOTHING);
    }

    private static BitSet alone(int leaf) {
        BitSet set = new BitSet();
        set.set(leaf);
        return set;
    }

    /** The group of which a leaf is the head; not to be changed. */
    BitSet group(int head) {
        return group[head];
    }

    /** A group waits for that of a leaf from now on; returns whether this makes a circle. */
    boolean waitFor(int head, int leaf) {
        waitsFor[head] = leaf;
        int at = heads.find(leaf);
        while (at != head && waitsFor[at] >= 0) {
            at = heads.find(waitsFor[at]);
        }
        return at == head;
    }

    /** Joins the groups in the circle through one, which then wait for none; returns the head of all. */
    int joinCircle(int head) {
        BitSet together = (BitSet) group[head].clone();
        for (int at = heads.find(waitsFor[head]); at != head; at = heads.find(waitsFor[at])) {
            together.or(group[at]);
        }
        together.stream().forEach(leaf -> heads.join(head, leaf));
        int newHead = heads.find(head);
        group[newHead] = together;
        waitsFor[newHead] = NOTHING;
        return newHead;
    }
}
