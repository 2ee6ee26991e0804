package org.bondspan.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against the priority queue of Java. */
class KeyHeapTest {

    private record Entry(long weight, long extent, int node) {}

    static LongStream seeds() {
        return Seeds.upTo(60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void givesKeysInOrderWhileSomeAreAddedEvenLesserOnes(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long range = 1L << random.nextInt(1, 50);
        KeyHeap heap = new KeyHeap();
        PriorityQueue<Entry> peer =
                new PriorityQueue<>(Comparator.comparingLong(Entry::weight).thenComparingLong(Entry::extent));
        for (int step = 0; step < 4000; step++) {
            if (random.nextInt(500) == 0) {
                heap.clear();
                peer.clear();
            }
            assertThat(heap.isEmpty()).isEqualTo(peer.isEmpty());
            if (peer.isEmpty() || random.nextInt(5) < 2 + (step / 100) % 2) {
                // Few extents, so that both parts of the key decide.
                long least = peer.isEmpty() || random.nextInt(50) == 0
                        ? 0
                        : peer.element().weight();
                Entry entry = new Entry(least + random.nextLong(range) / 2, random.nextLong(4), step);
                heap.add(entry.weight, entry.extent, entry.node);
                peer.add(entry);
            } else {
                assertThat(heap.leastWeight()).isEqualTo(peer.element().weight());
                assertThat(heap.leastExtent()).isEqualTo(peer.element().extent());
                Entry least = new Entry(heap.leastWeight(), heap.leastExtent(), heap.leastNode());
                assertThat(peer.remove(least)).isTrue();
                heap.removeLeast();
            }
        }
        List<Long> rest = new ArrayList<>();
        while (!heap.isEmpty()) {
            rest.add(heap.leastWeight());
            heap.removeLeast();
        }
        assertThat(rest).isSorted().hasSize(peer.size());
    }
}
