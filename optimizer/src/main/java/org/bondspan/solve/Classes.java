package org.bondspan.solve;

/** Disjoint classes of the numbers 0 .. size - 1, joined two by two; path halving. */
public final class Classes {

    private final int[] parent;

    /** Each number in a class of its own. */
    public Classes(int size) {
        parent = new int[size];
        for (int i = 0; i < size; i++) {
            parent[i] = i;
        }
    }

    /** The head of the class of a number, the same for all in it. */
    public int find(int item) {
        int at = item;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }

    /** Returns whether the two were apart. The smaller head stays head. */
    public boolean join(int a, int b) {
        int headA = find(a);
        int headB = find(b);
        if (headA == headB) {
            return false;
        }
        parent[Math.max(headA, headB)] = Math.min(headA, headB);
        return true;
    }
}
