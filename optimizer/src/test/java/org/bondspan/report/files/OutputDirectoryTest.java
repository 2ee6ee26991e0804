package org.bondspan.report.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputDirectoryTest {
    @TempDir
    private Path directory;

    private static OutputFile file(String name, String content) {
        return new OutputFile(name, content::getBytes);
    }

    @Test
    void filesAreWrittenWholeAndNothingElseIsLeft() throws IOException {
        OutputDirectory out = new OutputDirectory(directory.resolve("new").resolve("deeper"));

        assertThat(out.write(List.of(file("a", "one"), file("b", "two")))).hasSize(2);
        assertThat(directory.resolve("new/deeper/a")).hasContent("one");
        assertThat(directory.resolve("new/deeper")).isDirectoryContaining("glob:**/b");
        try (var left = Files.list(directory.resolve("new/deeper"))) {
            assertThat(left).hasSize(2);
        }
    }

    @Test
    void whatIsThereIsToldAndThenReplaced() throws IOException {
        Files.writeString(directory.resolve("a"), "old");
        OutputDirectory out = new OutputDirectory(directory);
        List<OutputFile> files = List.of(file("a", "new"), file("b", "new"));

        assertThat(out.listExisting(files)).containsExactly(directory.resolve("a"));
        out.write(files);
        assertThat(directory.resolve("a")).hasContent("new");
    }

    @Test
    void aFailureOnTheWayLeavesEverythingAsItWas() throws IOException {
        Files.writeString(directory.resolve("a"), "old");
        OutputFile failing = new OutputFile("b", () -> {
            throw new IllegalStateException("no room");
        });
        OutputDirectory out = new OutputDirectory(directory);

        assertThatThrownBy(() -> out.write(List.of(file("a", "new"), failing))).hasMessage("no room");
        assertThat(directory.resolve("a")).hasContent("old");
        try (var left = Files.list(directory)) {
            assertThat(left).hasSize(1);
        }
    }

    @Test
    void aFailureLeavesNoDirectoryThatWasMadeForIt() {
        OutputFile failing = new OutputFile("b", () -> {
            throw new IllegalStateException("no room");
        });
        OutputDirectory out = new OutputDirectory(directory.resolve("new").resolve("deeper"));

        assertThatThrownBy(() -> out.write(List.of(file("a", "one"), failing))).hasMessage("no room");
        assertThat(directory).isEmptyDirectory();
    }

    @Test
    void aDirectoryInTheWayIsTold() throws IOException {
        Files.createDirectory(directory.resolve("a"));

        assertThatThrownBy(() -> new OutputDirectory(directory).write(List.of(file("b", "new"), file("a", "new"))))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("directory");
        assertThat(directory.resolve("b")).doesNotExist();
    }
}
