package org.bondspan.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Groups of leaves, at first each by itself, of which one may wait for another; those in a circle become one group. */
final class Waiting {

    private static final int NOTHING = -1;

    private final Classes heads;
    private final int[] waitsFor;

    Waiting(int leaves) {
        heads = new Classes(leaves);
        waitsFor = new int[leaves];
        Arrays.fill(waitsFor, NOTHING);
    }

    /** A group, given by its head, waits for that of a leaf from now on; returns whether this makes a circle. */
    boolean waitFor(int head, int leaf) {
        waitsFor[head] = leaf;
        int at = heads.find(leaf);
        while (at != head && waitsFor[at] >= 0) {
            at = heads.find(waitsFor[at]);
        }
        return at == head;
    }

    /** The heads of the groups in the circle through one. */
    List<Integer> circle(int head) {
        List<Integer> circle = new ArrayList<>();
        int at = head;
        do {
            circle.add(at);
            at = heads.find(waitsFor[at]);
        } while (at != head);
        return circle;
    }

    /** Makes one group of several, which waits for none; returns its head. */
    int join(List<Integer> groups) {
        groups.forEach(head -> heads.join(groups.get(0), head));
        int head = heads.find(groups.get(0));
        waitsFor[head] = NOTHING;
        return head;
    }
}
