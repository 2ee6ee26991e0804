package org.bondspan.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.bondspan.report.Ink;

/**
 * Where a command reads and writes: answers on standard output, all else on standard error, in UTF-8 with line feeds
 * whatever the platform.
 */
record Streams(InputStream in, OutputStream out, OutputStream err, Ink ink) {
    /**
     * Prints the answer in one piece. A reader that has gone away, as {@code head} does, is no failure; any other is an
     * {@link UnwritableException}.
     */
    void answer(String text) {
        try {
            write(out, text);
        } catch (IOException e) {
            if (!isClosedPipe(e)) {
                throw new UnwritableException(e);
            }
        }
    }

    void tell(String text) {
        try {
            write(err, text);
        } catch (IOException e) {
            // Nowhere is left to say so; the exit code still tells.
            return;
        }
    }

    private static void write(OutputStream stream, String text) throws IOException {
        stream.write(text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
        stream.flush();
    }

    /** The operating system tells only in words; these are those of Linux, macOS and Windows. */
    private static boolean isClosedPipe(IOException e) {
        String words = String.valueOf(e.getMessage()).toLowerCase(Locale.ROOT);
        return words.contains("broken pipe") || words.contains("pipe is being closed");
    }
}
