package org.bondspan.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class LauncherTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int start(String... arguments) {
        return Launcher.start(
                List.of(arguments),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    @Test
    void helpNamesEveryOptionOnStandardOutput() {
        assertThat(start("--help")).isZero();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("SITE", "--level", "--proposal", "--prices", "--snapshot");
        assertThat(err.size()).isZero();
    }

    @Test
    void badArgumentsAreToldInOneLineWithExitCodeTwo() {
        assertThat(start("--colour", "red")).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8).lines())
                .singleElement()
                .asString()
                .contains("--colour");
        assertThat(out.size()).isZero();
    }
}
