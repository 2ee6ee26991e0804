package org.bondspan.solve;

import java.util.Arrays;

/** Stretches between two numbered ends, each with a length and a tariff, in plain arrays. */
final class Links {

    private int size;
    private int[] a = new int[8];
    private int[] b = new int[8];
    private long[] length = new long[8];
    private int[] tariff = new int[8];

    int add(int end, int otherEnd, long stretch, int tariffIndex) {
        if (size == a.length) {
            resize(2 * size);
        }
        a[size] = end;
        b[size] = otherEnd;
        length[size] = stretch;
        tariff[size] = tariffIndex;
        return size++;
    }

    Links copy() {
        Links copy = new Links();
        copy.a = a;
        copy.b = b;
        copy.length = length;
        copy.tariff = tariff;
        copy.size = size;
        copy.resize(size);
        return copy;
    }

    int size() {
        return size;
    }

    int a(int i) {
        return a[i];
    }

    int b(int i) {
        return b[i];
    }

    long length(int i) {
        return length[i];
    }

    int tariff(int i) {
        return tariff[i];
    }

    private void resize(int capacity) {
        a = Arrays.copyOf(a, capacity);
        b = Arrays.copyOf(b, capacity);
        length = Arrays.copyOf(length, capacity);
        tariff = Arrays.copyOf(tariff, capacity);
    }
}
