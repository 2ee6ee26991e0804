package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.Optional;

/** What the window asks its user for: files, a directory, leave to overwrite. */
public interface Dialogs {

    /** Kinds of files, with the ending that they usually have. */
    enum Kind {
        SITE("Site files", "*.site.json"),
        PROPOSAL("Proposals", "*.proposal.json"),
        PRICES("Price books", "*.prices.json"),
        PNG("Picture, PNG", "*.png"),
        SVG("Drawing, SVG", "*.svg"),
        PDF("Drawing, PDF", "*.pdf");

        private final String words;
        private final String pattern;

        Kind(String words, String pattern) {
            this.words = words;
            this.pattern = pattern;
        }

        String words() {
            return words;
        }

        String pattern() {
            return pattern;
        }

        /** {@code .png}. */
        String ending() {
            return pattern.substring(1);
        }
    }

    /** A file to read; empty when the user thinks better of it. */
    Optional<Path> open(Kind kind);

    /** A file to write; whoever chooses one that exists has agreed to overwrite it. */
    Optional<Path> save(Kind kind, String name);

    Optional<Path> directory(String title);

    boolean confirm(String question, String yes);
}
