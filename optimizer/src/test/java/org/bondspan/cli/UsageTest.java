package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UsageTest {
    static Stream<List<String>> mistakes() {
        String site = Run.sample("hall-steel");
        return Stream.of(
                List.of(),
                List.of("rout", site),
                List.of("route"),
                List.of("route", site, site),
                List.of("route", "--jsno", site),
                List.of("route", "--objective"),
                List.of("route", "--objective", "weight", site),
                List.of("route", "--objective", "cost", site),
                List.of("route", "--json", "--json", site),
                List.of("check"),
                List.of("check", "--json", site),
                List.of("review"),
                List.of("review", site),
                List.of("review", site, site, site),
                List.of("schema"),
                List.of("schema", "sites"),
                List.of("check", "@" + site));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeGetsOneLineAndExitTwo(List<String> args) {
        Run run = Run.of(args.toArray(String[]::new));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).endsWith("\n").doesNotContain("Exception", "\tat ");
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void costIsRefusedWithoutPrices() {
        Run run = Run.of("route", "--objective", "cost", Run.sample("hall-steel"));

        assertThat(run.err()).contains("--objective cost takes prices", "--prices FILE");
    }

    @Test
    void anUnknownOptionIsNamed() {
        assertThat(Run.of("route", "--jsno", Run.sample("hall-steel")).err())
                .isEqualTo("bondspan route: \"--jsno\" is not known here. See bondspan route --help\n");
    }

    @Test
    void helpGoesToStandardOutput() {
        Run run = Run.of("--help");

        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("check", "route", "review", "takeoff", "schema", "Exit codes")
                .doesNotContain("\r");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void everyCommandHasHelp() {
        for (String command : List.of("check", "route", "review", "takeoff", "schema")) {
            Run run = Run.of(command, "--help");
            assertThat(run.exit()).isZero();
            assertThat(run.out()).startsWith("Usage: bondspan " + command);
        }
    }

    @Test
    void versionNamesTheEditions() {
        Run run = Run.of("--version");

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("Bondspan", "2014, 2017, 2020, 2023");
    }

    @Test
    void nothingIsColouredWhereStandardOutputIsNoTerminal() {
        // The tests run without a terminal, as a pipe does.
        assertThat(TerminalInk.forStandardOutput()).isSameAs(org.bondspan.report.Ink.PLAIN);
        assertThat(Run.of("check", Run.sample("hall-steel")).out()).doesNotContain("\u001b");
    }

    @Test
    void coloursAddNothingButEscapeSequences() {
        String[] args = {"check", Run.sample("hall-steel")};
        Run coloured = Run.with("".getBytes(StandardCharsets.UTF_8), TerminalInk.COLOURED, args);

        assertThat(coloured.out()).contains("\u001b[");
        assertThat(coloured.out().replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(Run.of(args).out());
    }
}
