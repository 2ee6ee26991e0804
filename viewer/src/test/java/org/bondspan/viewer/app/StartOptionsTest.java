package org.bondspan.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartOptionsTest {
    @Test
    void readsSiteAndOptionsInAnyOrder() {
        StartOptions options = StartOptions.of(
                List.of("--level", "L2", "hall.site.json", "--proposal", "a.proposal.json", "--snapshot", "out.png"));

        assertThat(options.site()).contains(Path.of("hall.site.json"));
        assertThat(options.level()).contains("L2");
        assertThat(options.proposal()).contains(Path.of("a.proposal.json"));
        assertThat(options.snapshot()).contains(Path.of("out.png"));
        assertThat(options.prices()).isEmpty();
    }

    @Test
    void withoutWordsTheWindowIsEmpty() {
        assertThat(StartOptions.of(List.of()).site()).isEmpty();
    }

    @Test
    void whatIsNotUnderstoodIsSaidInOneLine() {
        assertThatThrownBy(() -> StartOptions.of(List.of("--levle", "L2")))
                .hasMessageStartingWith("--levle is not known here")
                .hasMessageNotContaining("\n");
        assertThatThrownBy(() -> StartOptions.of(List.of("a.json", "--level")))
                .hasMessageStartingWith("--level lacks its value");
        assertThatThrownBy(() -> StartOptions.of(List.of("a.json", "b.json"))).hasMessageContaining("one site");
        assertThatThrownBy(() -> StartOptions.of(List.of("--snapshot", "x.png")))
                .hasMessageContaining("name the site first");
    }

    @Test
    void aPictureGoesIntoANewFileOfADirectoryThatIsThere(@TempDir Path directory) throws IOException {
        Path there = Files.writeString(directory.resolve("there.png"), "kept");
        assertThatThrownBy(() -> StartOptions.of(List.of("a.json", "--snapshot", there.toString())))
                .hasMessageContaining("there already");
        assertThatThrownBy(() -> StartOptions.of(List.of(
                        "a.json", "--snapshot", directory.resolve("no/x.png").toString())))
                .hasMessageContaining("there is no directory");
        assertThatThrownBy(() -> StartOptions.of(List.of("a.json", "--snapshot", "x.jpg")))
                .hasMessageContaining(".png");
    }
}
