package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.bondspan.report.Ink;
import org.junit.jupiter.api.Test;

class StreamsTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void aReaderThatHasGoneAwayIsNoFailure() {
        assertThat(check(failing("Broken pipe"))).isZero();
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void anAnswerThatCannotBeWrittenIsOneLineAndExitTwo() {
        assertThat(check(failing("No space left on device"))).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo("bondspan: the answer cannot be written to standard output: No space left on device.\n");
    }

    @Test
    void linesEndInLineFeedsAndTextIsUtf8() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new Streams(InputStream.nullInputStream(), out, err, Ink.PLAIN).answer("Größe\r\n2\n");

        assertThat(out.toByteArray()).isEqualTo("Größe\n2\n".getBytes(StandardCharsets.UTF_8));
    }

    private int check(OutputStream out) {
        Streams streams = new Streams(InputStream.nullInputStream(), out, err, Ink.PLAIN);
        return Bondspan.run(streams, "check", Run.sample("hall-steel"));
    }

    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int value) throws IOException {
                throw new IOException(why);
            }
        };
    }
}
