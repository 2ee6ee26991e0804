package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImpossibleTest {
    /** Without its run to the rods nothing leads there. */
    private static String unreachable() throws IOException {
        String text = Files.readString(Path.of(Run.sample("hall-timber")));
        return text.lines()
                .filter(line -> !line.contains("\"rod-run\""))
                .reduce("", (before, line) -> before + line + "\n");
    }

    @Test
    void whatCannotBeReachedIsNamedWithItsRule() throws IOException {
        Run run = Run.withInput(unreachable(), "route", "-");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Impossible:", "CANNOT BE REACHED", "Cannot be reached; the findings say why.")
                .contains("VIOLATION 250.50 rod-1", "VIOLATION 250.50 rod-2")
                .doesNotContain("CONDUCTORS", "Least copper");
    }

    @Test
    void theResultHasNoCopper() throws IOException {
        Run run = Run.withInput(unreachable(), "route", "--json", "-");

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out().replace(" ", "")).contains("\"status\":\"impossible\"", "\"copper\":null");
    }

    /** 250.53(A)(3): rods stand at least 6 ft apart. */
    @Test
    void aViolationThatRemainsIsTheExitCodeOfCheckAndRoute() throws IOException {
        String close = Files.readString(Path.of(Run.sample("pump-house"))).replace("[0, 48]", "[0, 44]");

        for (String command : new String[] {"check", "route"}) {
            Run run = Run.withInput(close, command, "-");
            assertThat(run.exit()).isEqualTo(1);
            assertThat(run.out()).contains("1 violation to mend", "VIOLATION 250.53(A)(3) rod-2");
        }
    }

    /** A building without electrodes violates 250.50, and nothing about it is least. */
    @Test
    void aSiteWithoutElectrodesLeadsWithItsViolation(@TempDir Path directory) throws IOException {
        Path shed = Files.writeString(directory.resolve("shed.site.json"), """
                {"format": "bondspan-site/1", "name": "Shed", "adoption": " ",
                 "levels": [{"id": "L1", "outline": [[0, 0], [40, 0], [40, 20], [0, 20]], "open": {"height": 0}}],
                 "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "2 AWG", "sets": 1},
                   "connections": [{"at": [0, 0]}]}],
                 "electrodes": []}""");
        Run run = Run.of("route", shed.toString(), "--out", directory.toString());

        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).startsWith("""
                        Shed
                          NFPA 70, 2020 edition. Adoption and local amendments not stated.

                          Violates: 1 violation to mend, see FINDINGS.
                          No copper: nothing is drawn that a conductor would have to connect.
                        """).contains("VIOLATION 250.50").doesNotContain("Least copper");
        assertThat(Files.readString(directory.resolve("shed.report.html")))
                .contains("Violates: 1 violation to mend, see Findings. No copper: nothing is drawn");
    }
}
