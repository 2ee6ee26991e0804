package org.bondspan.cli;

import java.io.IOException;
import java.nio.file.Files;
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

    /** Java tells only of standard input and output together; where the system tells more, that counts. */
    private static boolean isStandardErrorATerminal() {
        Path standardError = Path.of("/proc/self/fd/2");
        try {
            return Files.exists(standardError)
                    ? standardError.toRealPath().startsWith("/dev/pts")
                            || standardError.toRealPath().startsWith("/dev/tty")
                    : System.console() != null;
        } catch (IOException e) {
            return false;
        }
    }
}
