package org.bondspan.viewer.app;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The command line: {@code [SITE] [--level ID] [--proposal FILE] [--prices FILE] [--snapshot FILE.png]}.
 *
 * @param snapshot writes a picture of the window once the answer is there, and ends the program
 */
public record StartOptions(
        Optional<Path> site,
        Optional<String> level,
        Optional<Path> proposal,
        Optional<Path> prices,
        Optional<Path> snapshot) {

    public static final String USAGE =
            "bondspan-viewer [SITE] [--level ID] [--proposal FILE] [--prices FILE] [--snapshot FILE.png]";

    private static final List<String> OPTIONS = List.of("--level", "--proposal", "--prices", "--snapshot");

    /**
     * Reads the words of a command line.
     *
     * @throws IllegalArgumentException with one line for the user, when they cannot be understood
     */
    public static StartOptions of(List<String> words) {
        List<String> sites = new ArrayList<>();
        Map<String, String> options = new HashMap<>();
        for (Iterator<String> rest = words.iterator(); rest.hasNext(); ) {
            String word = rest.next();
            if (!word.startsWith("--")) {
                sites.add(word);
                continue;
            }
            if (!OPTIONS.contains(word)) {
                throw new IllegalArgumentException(word + " is not known here. Usage: " + USAGE);
            }
            if (!rest.hasNext()) {
                throw new IllegalArgumentException(word + " lacks its value. Usage: " + USAGE);
            }
            options.put(word, rest.next());
        }
        if (sites.size() > 1) {
            throw new IllegalArgumentException("one site at a time, not " + sites.size() + ". Usage: " + USAGE);
        }
        StartOptions read = new StartOptions(
                path(sites.isEmpty() ? Optional.empty() : Optional.of(sites.get(0))),
                Optional.ofNullable(options.get("--level")),
                path(Optional.ofNullable(options.get("--proposal"))),
                path(Optional.ofNullable(options.get("--prices"))),
                path(Optional.ofNullable(options.get("--snapshot"))));
        if (sites.isEmpty() && !options.isEmpty()) {
            throw new IllegalArgumentException("name the site first. Usage: " + USAGE);
        }
        read.snapshot().ifPresent(StartOptions::check);
        return read;
    }

    private static void check(Path snapshot) {
        if (!snapshot.toString().toLowerCase(Locale.ROOT).endsWith(".png")) {
            throw new IllegalArgumentException(
                    "--snapshot " + snapshot + ": the picture is a PNG. Let the name end in .png");
        }
        if (Files.exists(snapshot)) {
            throw new IllegalArgumentException("--snapshot " + snapshot + " is there already. Name another file");
        }
        Path directory = snapshot.toAbsolutePath().getParent();
        if (directory != null && !Files.isDirectory(directory)) {
            throw new IllegalArgumentException("--snapshot " + snapshot + ": there is no directory " + directory);
        }
    }

    private static Optional<Path> path(Optional<String> name) {
        try {
            return name.map(Path::of);
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException(name.orElse("") + " is not the name of a file", e);
        }
    }
}
