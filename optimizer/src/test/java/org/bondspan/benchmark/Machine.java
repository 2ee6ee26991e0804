package org.bondspan.benchmark;

import java.util.List;
import java.util.Locale;

/** What a run depends on: no names of hosts, no folders. */
final class Machine {
    private Machine() {}

    static String facts() {
        Runtime runtime = Runtime.getRuntime();
        return String.join(
                ", ",
                List.of(
                        runtime.availableProcessors() + " cores",
                        String.format(Locale.ROOT, "heap up to %.1f GiB", runtime.maxMemory() / (double) (1L << 30)),
                        System.getProperty("java.vm.name") + " " + System.getProperty("java.vm.version"),
                        System.getProperty("os.name") + " " + System.getProperty("os.arch")));
    }
}
