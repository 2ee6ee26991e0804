package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.PriorityQueue;

/**
 * The least weight on a {@link Raster} by the plain table over all subsets of terminals (Dreyfus and Wagner, Networks
 * 1, 1971), each subset at the size that the cut around it needs.
 */
final class SubsetTable {
    private static final long FAR = Long.MAX_VALUE / 4;

    private final Raster raster;
    private final List<List<Raster.Edge>> around = new ArrayList<>();

    private record Label(long weight, int node) implements Comparable<Label> {
        @Override
        public int compareTo(Label other) {
            return Long.compare(weight, other.weight);
        }
    }

    SubsetTable(Raster raster) {
        this.raster = raster;
        for (int v = 0; v < raster.nodeCount(); v++) {
            around.add(new ArrayList<>());
        }
        raster.edges().forEach(edge -> {
            around.get(edge.a()).add(edge);
            around.get(edge.b()).add(edge);
        });
    }

    /** Tenths of a pound per 1000 ft times feet; empty when something cannot be reached. */
    OptionalLong leastWeight() {
        int others = raster.terminals().size() - 1;
        if (others == 0) {
            return OptionalLong.of(0);
        }
        long[][] table = new long[1 << others][];
        for (int set = 1; set < 1 << others; set++) {
            // terminal 0 is never in the set: bit i is terminal i + 1
            int size = raster.book().need(set << 1);
            long[] best = start(set, size, table);
            grow(best, size);
            table[set] = best;
        }
        int size = raster.book().need(1);
        long least = FAR;
        for (Raster.Landing way : raster.terminals().get(0)) {
            least = Math.min(least, table[table.length - 1][way.node()] + way.weight(size));
        }
        return least >= FAR
                ? OptionalLong.empty()
                : OptionalLong.of(least + raster.book().jumpers());
    }

    private long[] start(int set, int size, long[][] table) {
        long[] best = new long[raster.nodeCount()];
        Arrays.fill(best, FAR);
        if (Integer.bitCount(set) == 1) {
            int terminal = Integer.numberOfTrailingZeros(set) + 1;
            for (Raster.Landing way : raster.terminals().get(terminal)) {
                best[way.node()] = Math.min(best[way.node()], way.weight(size));
            }
        }
        for (int part = (set - 1) & set; part > (set ^ part); part = (part - 1) & set) {
            for (int v = 0; v < best.length; v++) {
                best[v] = Math.min(best[v], table[part][v] + table[set ^ part][v]);
            }
        }
        return best;
    }

    private void grow(long[] best, int size) {
        PriorityQueue<Label> queue = new PriorityQueue<>();
        for (int v = 0; v < best.length; v++) {
            if (best[v] < FAR) {
                queue.add(new Label(best[v], v));
            }
        }
        while (!queue.isEmpty()) {
            Label label = queue.remove();
            if (label.weight() == best[label.node()]) {
                for (Raster.Edge edge : around.get(label.node())) {
                    long weight = edge.weight(size);
                    int next = edge.a() == label.node() ? edge.b() : edge.a();
                    if (weight < FAR && label.weight() + weight < best[next]) {
                        best[next] = label.weight() + weight;
                        queue.add(new Label(best[next], next));
                    }
                }
            }
        }
    }
}
