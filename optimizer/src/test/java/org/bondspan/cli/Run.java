package org.bondspan.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.bondspan.report.Ink;

/** One run of the program inside the test, with what it printed. */
record Run(int exit, String out, String err) {
    /** The sample sites; tests run in the directory of their module. */
    static final Path SAMPLES = Path.of("..", "samples");

    static Run of(String... args) {
        return withInput("", args);
    }

    static Run withInput(String input, String... args) {
        return with(input.getBytes(StandardCharsets.UTF_8), Ink.PLAIN, args);
    }

    static Run with(byte[] input, Ink ink, String... args) {
        return with(input, ink, Watch.NOBODY, args);
    }

    static Run watched(Watch watch, String... args) {
        return with(new byte[0], Ink.PLAIN, watch, args);
    }

    private static Run with(byte[] input, Ink ink, Watch watch, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Bondspan.run(new Streams(new ByteArrayInputStream(input), out, err, ink), watch, args);
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static String sample(String name) {
        return SAMPLES.resolve(name + ".site.json").toString();
    }
}
