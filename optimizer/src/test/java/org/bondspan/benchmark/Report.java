package org.bondspan.benchmark;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where results go: a folder, and a stream for people who wait. */
final class Report {
    private final Path folder;
    private final PrintStream screen;

    Report(Path folder, PrintStream screen) {
        this.folder = folder;
        this.screen = screen;
    }

    void say(String line) {
        screen.println(line);
        screen.flush();
    }

    /** Writes a table as {@code name.md} and {@code name.csv}. */
    void write(String name, ResultTable table) {
        String text = table.toMarkdown() + "\n" + Machine.facts() + "\n";
        say("\n" + text);
        write(name + ".md", text);
        write(name + ".csv", table.toCsv());
    }

    void write(String name, LogPlot plot) {
        write(name + ".svg", plot.toSvg());
    }

    private void write(String file, String text) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(file), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
