package org.bondspan.sheet;

import java.lang.management.ManagementFactory;
import org.bondspan.sheet.out.PdfFile;
import org.bondspan.sheet.out.SvgFile;

/**
 * Draws 300 conductors on 20 levels, as PDF and SVG, and prints how long each round took, and how much processor time
 * of all threads, compilers of Java included; run by hand.
 */
final class SheetBenchmark {
    private SheetBenchmark() {}

    public static void main(String... args) {
        SheetContent content = LargeAnswer.of(20, 15);
        for (int round = 0; round < 5; round++) {
            long start = System.nanoTime();
            long processor = processorTime();
            content.site().levels().forEach(level -> {
                var sheets = PlanSheets.of(content, level, SheetSize.ARCH_D);
                PdfFile.of(sheets);
                sheets.forEach(SvgFile::of);
            });
            System.out.println((System.nanoTime() - start) / 1_000_000 + " ms, processor "
                    + (processorTime() - processor) / 1_000_000 + " ms");
        }
    }

    private static long processorTime() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }
}
