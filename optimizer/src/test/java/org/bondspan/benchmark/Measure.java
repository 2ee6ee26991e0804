package org.bondspan.benchmark;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What one piece of work gave, how long it took and the most heap that was taken up meanwhile, garbage included.
 *
 * @param millis wall clock; the median when there were several runs
 * @param processorMillis processor time of the thread that did the work, which others on the machine lengthen less; the
 *     median when there were several runs
 * @param peakMebibytes beyond what was in use before; the sum of the peaks of all heap pools, so rather too much than
 *     too little
 */
record Measure<T>(T result, double millis, double processorMillis, double peakMebibytes) {

    static <T> Measure<T> once(Supplier<T> work) {
        System.gc();
        heap().forEach(MemoryPoolMXBean::resetPeakUsage);
        double before = heap().mapToDouble(pool -> pool.getUsage().getUsed()).sum() / (1 << 20);
        long start = System.nanoTime();
        long startOfThread = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        T result = work.get();
        double millis = (System.nanoTime() - start) / 1e6;
        double processorMillis = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - startOfThread) / 1e6;
        double peak = heap().mapToDouble(pool -> pool.getPeakUsage().getUsed()).sum() / (1 << 20);
        return new Measure<>(result, millis, processorMillis, peak - before);
    }

    /** The median of several runs, none of them the first. */
    static <T> Measure<T> warm(int runs, Supplier<T> work) {
        Measure<T> last = once(work);
        double[] millis = new double[runs];
        double[] processorMillis = new double[runs];
        for (int i = 0; i < runs; i++) {
            last = once(work);
            millis[i] = last.millis;
            processorMillis[i] = last.processorMillis;
        }
        return new Measure<>(
                last.result, median(Arrays.stream(millis)), median(Arrays.stream(processorMillis)), last.peakMebibytes);
    }

    static double median(DoubleStream values) {
        double[] sorted = values.sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static Stream<MemoryPoolMXBean> heap() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP);
    }
}
