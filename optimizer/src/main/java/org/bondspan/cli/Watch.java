package org.bondspan.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

/**
 * Who watches a command while it runs.
 *
 * @param isTerminal whether standard error goes to somebody's terminal
 * @param stop whether somebody has asked for the answer now
 */
record Watch(boolean isTerminal, BooleanSupplier stop) {
    static final Watch NOBODY = new Watch(false, () -> false);

    static Watch onTerminal(BooleanSupplier stop) {
        return new Watch(isStandardErrorATerminal(), stop);
    }

    /** Java does not tell; where the system does not either, nobody is thought to watch, unless asked for. */
    private static boolean isStandardErrorATerminal() {
        try {
            Path standardError = Path.of("/proc/self/fd/2").toRealPath();
            return standardError.startsWith("/dev/pts") || standardError.startsWith("/dev/tty");
        } catch (IOException e) {
            return false;
        }
    }
}
