package org.bondspan.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
