package org.bondspan.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.bondspan.solve.Outcome;
import org.bondspan.solve.PublicCase;
import org.bondspan.solve.Solver;

/** Solves one public instance in a process of its own, which can be ended when it takes too long. */
public final class Lone {
    private Lone() {}

    /**
     * How it ended.
     *
     * @param status {@code least}, or why there is no result
     */
    record Ending(String status, long weight, double millis, double peakMebibytes) {
        private static Ending without(String status) {
            return new Ending(status, 0, Double.NaN, Double.NaN);
        }
    }

    /** Set and name of the instance. */
    public static void main(String[] args) {
        PublicCase found = PublicCase.list().orElseThrow().stream()
                .filter(listed -> listed.set().equals(args[0]) && listed.name().equals(args[1]))
                .findFirst()
                .orElseThrow()
                .read();
        try {
            Measure<Outcome> solving = Measure.once(() -> Solver.solve(found.problem()));
            long weight = ((Outcome.Least) solving.result()).tree().weight();
            System.out.println("least " + weight + " " + solving.millis() + " " + solving.peakMebibytes());
        } catch (IllegalArgumentException | OutOfMemoryError refused) {
            System.out.println(refused instanceof OutOfMemoryError ? "memory" : "refused");
        }
    }

    static Ending solve(PublicCase.Listed listed, int seconds) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        ProcessBuilder command = new ProcessBuilder(
                java,
                "-Xmx" + (Runtime.getRuntime().maxMemory() >> 20) + "m",
                "-Dbenchmarks=" + System.getProperty("benchmarks", ""),
                "-cp",
                System.getProperty("java.class.path"),
                Lone.class.getName(),
                listed.set(),
                listed.name());
        command.redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            Process process = command.start();
            if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
                process.destroyForcibly().waitFor();
                return Ending.without("over " + seconds + " s");
            }
            return read(process);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Ending.without("interrupted");
        }
    }

    private static Ending read(Process process) throws IOException {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String last = lines.lines().reduce("failed", (before, line) -> line);
            String[] words = last.split(" ", -1);
            return words.length < 4
                    ? Ending.without(last)
                    : new Ending(
                            words[0],
                            Long.parseLong(words[1]),
                            Double.parseDouble(words[2]),
                            Double.parseDouble(words[3]));
        }
    }
}
