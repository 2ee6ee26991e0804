package org.bondspan.solve;

import java.util.Arrays;

/**
 * The kinds of stretches: what costs the same at every grade is of one kind. There are far fewer kinds than stretches,
 * as lines lie at the same few distances from each other all over a floor; so a table by kind stays near the processor
 * where one by stretch would not.
 */
final class Kinds {

    private static final int NONE = -1;

    private final StretchPool pool;
    /** By kind: the first stretch of it. */
    private int[] first = new int[16];

    private int count;
    /** Kinds by hash, with gaps; at most half full. */
    private int[] slots = emptySlots(2 * first.length);

    Kinds(StretchPool pool) {
        this.pool = pool;
    }

    private static int[] emptySlots(int size) {
        int[] slots = new int[size];
        Arrays.fill(slots, NONE);
        return slots;
    }

    /** The kind of a stretch. */
    int of(int stretch) {
        int slot = slotOf(stretch);
        if (slots[slot] >= 0) {
            return slots[slot];
        }
        if (count == first.length) {
            grow();
            slot = slotOf(stretch);
        }
        slots[slot] = count;
        first[count] = stretch;
        return count++;
    }

    /** The slot with the kind of a stretch, or the gap where that belongs. */
    private int slotOf(int stretch) {
        int slot = pool.hash(stretch) & (slots.length - 1);
        while (slots[slot] >= 0 && !pool.costSame(first[slots[slot]], stretch)) {
            slot = (slot + 1) & (slots.length - 1);
        }
        return slot;
    }

    private void grow() {
        first = Arrays.copyOf(first, 2 * count);
        slots = emptySlots(2 * first.length);
        for (int kind = 0; kind < count; kind++) {
            slots[slotOf(first[kind])] = kind;
        }
    }

    /** Weights by kind at a grade, below 0 where it cannot be met. */
    long[] weights(int grade) {
        return Arrays.stream(first, 0, count)
                .mapToLong(stretch -> pool.weight(stretch, grade))
                .toArray();
    }

    /** Extents by kind at a grade, as in {@link Cost}. */
    long[] extents(int grade) {
        return Arrays.stream(first, 0, count)
                .mapToLong(stretch -> pool.extent(stretch, grade))
                .toArray();
    }
}
