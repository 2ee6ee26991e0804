package org.bondspan.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program in a process of its own, interrupted while it searches; what it does then is told in the README. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there are no signals to send")
class InterruptTest {
    /** More than an exact search can take, so that only the limit of ten minutes would end the search. */
    private static final int ACROSS = 9;

    private static final int MOST_SECONDS = 60;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM"})
    void answersWithTheBestFoundAndItsGap(String signal) throws IOException, InterruptedException {
        assertThat(interrupted(signal, Exit.CLEAN, "route"))
                .contains("Best found, not proven least")
                .containsPattern("At most \\d+\\.\\d+ % above\\s+the\\s+least\\s+possible");
    }

    /** 90 ft of 6 AWG at 81.0 lb per 1,000 ft (ASTM B8) are 7.29 lb, and one rod of many: 250.50. */
    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM"})
    void aReviewIsWholeAndSetsItsCopperBesideTheBestFound(String signal) throws IOException, InterruptedException {
        Path proposal = Files.writeString(folder.resolve("one.proposal.json"), """
                {"format": "bondspan-proposal/1", "conductors": [
                  {"id": "A", "size": "6 AWG", "length": 90, "from": {"service": "S"}, "to": {"electrode": "R0"}}]}""");

        assertThat(interrupted(signal, Exit.FOUND, "review", proposal.toString()))
                .contains("VIOLATION 250.50 R80", "WAYS", "CAUTIONS")
                .containsPattern("It\\s+takes\\s+7\\.29\\s+lb\\s+of\\s+copper;\\s+best\\s+found\\s+\\S+\\s+lb,"
                        + "\\s+at\\s+least\\s+\\S+\\s+lb,\\s+not\\s+proven\\s+least");
    }

    @Test
    void theBestRouteFoundIsTakenOff() throws IOException, InterruptedException {
        assertThat(interrupted("TERM", Exit.CLEAN, "takeoff")).contains("Quantities of the best route found");
    }

    /** What a command answers that is interrupted once it has told how its search goes. */
    private String interrupted(String signal, int exit, String command, String... more)
            throws IOException, InterruptedException {
        Path site = Files.writeString(folder.resolve("yard.site.json"), manyRods());
        Path answer = folder.resolve("answer.txt");
        Process program = start(answer, command, site, more);
        try (BufferedReader progress = program.errorReader()) {
            assertThat(progress.readLine()).startsWith("best so far").contains(", gap ");
            assumeTrue(mayBeSent(signal, program), "signals are blocked for all that these tests start");
            assertThat(new ProcessBuilder("kill", "-" + signal, Long.toString(program.pid()))
                            .start()
                            .waitFor())
                    .isZero();
            assertThat(program.waitFor(MOST_SECONDS, TimeUnit.SECONDS)).isTrue();
        } finally {
            program.destroyForcibly();
        }
        assertThat(program.exitValue()).isEqualTo(exit);
        return Files.readString(answer);
    }

    private static Process start(Path answer, String name, Path site, String... more) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Bondspan.class.getName()));
        command.addAll(List.of(name, "--time-limit", "600", "--progress", site.toString()));
        command.addAll(List.of(more));
        return new ProcessBuilder(command).redirectOutput(answer.toFile()).start();
    }

    /** A shell that starts the tests in its background may have told all below it to ignore an interrupt. */
    private static boolean mayBeSent(String signal, Process program) throws IOException {
        Path status = Path.of("/proc", Long.toString(program.pid()), "status");
        if (!signal.equals("INT") || !Files.exists(status)) {
            return true;
        }
        long ignored = Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .mapToLong(line -> Long.parseUnsignedLong(line.substring(7).trim(), 16))
                .findFirst()
                .orElse(0);
        return (ignored & 2) == 0;
    }

    /** Rods scattered over a yard, 8 ft apart at least, 250.53(A)(3). */
    private static String manyRods() {
        SplittableRandom random = new SplittableRandom(7);
        List<String> rods = new ArrayList<>();
        for (int i = 0; i < ACROSS * ACROSS; i++) {
            int x = 10 + i % ACROSS * 20 + random.nextInt(12);
            int y = 10 + i / ACROSS * 20 + random.nextInt(12);
            rods.add("""
                    {"id": "R%d", "type": "rod", "rodLength": 8, "diameter": 0.625, "connections": [{"id": "c", "at": [%d, %d], "height": 0}]}
                    """.formatted(i, x, y));
        }
        return """
                {"format": "bondspan-site/1",
                 "levels": [{"id": "L1", "outline": [[0, 0], [200, 0], [200, 200], [0, 200]], "open": {"height": 0}}],
                 "services": [{"id": "S", "ungrounded": {"material": "copper", "size": "350 kcmil", "sets": 1},
                   "connections": [{"id": "c", "at": [0, 10], "height": 0}]}],
                 "electrodes": [%s]}""".formatted(String.join(",", rods));
    }
}
