package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.bondspan.report.Ink;
import org.junit.jupiter.api.Test;

class FailuresTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Streams streams =
            new Streams(InputStream.nullInputStream(), new ByteArrayOutputStream(), err, Ink.PLAIN);

    private String said() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aBugIsOneLineAndExitSeventy() {
        int exit = new Failures(streams, "route", "a").failed(new IllegalStateException("no tree\nat all"));

        assertThat(exit).isEqualTo(70);
        assertThat(said())
                .isEqualTo("bondspan failed: java.lang.IllegalStateException: no tree."
                        + " This is not the fault of the site file; please report it.\n");
    }

    @Test
    void traceAddsWhereItHappened() {
        new Failures(streams, "route", "--trace", "a").failed(new IllegalStateException("no tree"));

        assertThat(said()).contains("\tat org.bondspan.cli.FailuresTest");
    }

    @Test
    void memoryThatDoesNotSufficeIsNoBug() {
        int exit = new Failures(streams).failed(new OutOfMemoryError("Java heap space"));

        assertThat(exit).isEqualTo(70);
        assertThat(said()).contains("-Xmx").doesNotContain("report");
    }
}
