package org.bondspan.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;

/** The full site with one piece of its text replaced, and what the reader says of it. */
record Edit(String text, long line) {
    static final String FILE = "full.site.json";

    static Edit of(String piece, String replacement) {
        String full = Fixtures.text(FILE);
        int at = full.indexOf(piece);
        assertThat(at).as("place of %s", piece).isNotNegative();
        long line = full.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        return new Edit(full.substring(0, at) + replacement + full.substring(at + piece.length()), line);
    }

    /** One message, on the line of the edit: what follows file and line. */
    void says(String message) {
        saysOnLine(line, message);
    }

    void saysOnLine(long expectedLine, String message) {
        saysAll(FILE + ":" + expectedLine + ": " + message);
    }

    /** All messages, whole. */
    void saysAll(String... messages) {
        InputException refused = catchThrowableOfType(InputException.class, () -> SiteReader.parse(text, FILE));
        assertThat(refused).as("reader of %s", text).isNotNull();
        assertThat(refused.problems().stream().map(Problem::toString)).containsExactly(messages);
        assertThat(refused).hasMessage(String.join("\n", Arrays.asList(messages)));
    }

    void isAccepted() {
        assertThat(SiteReader.parse(text, FILE)).isNotNull();
    }
}
