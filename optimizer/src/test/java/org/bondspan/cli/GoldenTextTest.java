package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text as people see it, read and approved once; {@code -Dgolden=update} rewrites the files for the next reading. */
class GoldenTextTest {
    private static final Path GOLDEN = Path.of("src", "test", "resources", "golden");

    @ParameterizedTest
    @ValueSource(strings = {"route", "check"})
    void theTextIsAsApproved(String command) throws IOException {
        Path file = GOLDEN.resolve("hall-joint." + command + ".txt");
        String text = Run.of(command, Run.sample("hall-joint")).out();
        if ("update".equals(System.getProperty("golden"))) {
            Files.createDirectories(GOLDEN);
            Files.writeString(file, text);
        }

        assertThat(text).isEqualTo(Files.readString(file));
    }
}
