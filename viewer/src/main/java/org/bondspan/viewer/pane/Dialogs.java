package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.Optional;

/** What the window asks its user for: files, a directory, leave to overwrite. */
public interface Dialogs {

    /** Kinds of files, with the endings that they usually have. */
    enum Kind {
        SITE("Site files", "*.site.json"),
        PROPOSAL("Proposals and results", "*.proposal.json", "*.result.json"),
        PRICES("Price books", "*.prices.json"),
        PNG("Picture, PNG", "*.png"),
        SVG("Drawing, SVG", "*.svg"),
        PDF("Drawing, PDF", "*.pdf");

        private final String words;
        private final String[] endings;

        Kind(String words, String... endings) {
            this.words = words;
            this.endings = endings;
        }

        String words() {
            return words;
        }

        String[] endings() {
            return endings.clone();
        }

        /** {@code .png}. */
        String ending() {
            return endings[0].substring(1);
        }
    }

    /** A file to read; empty when the user thinks better of it. */
    Optional<Path> open(Kind kind);

    /** A file to write; whoever chooses one that exists has agreed to overwrite it. */
    Optional<Path> save(Kind kind, String name);

    Optional<Path> directory(String title);

    boolean confirm(String question, String yes);
}
