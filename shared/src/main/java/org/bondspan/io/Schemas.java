package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The published schemas of the file formats, JSON Schema 2020-12. */
public final class Schemas {
    private static final List<String> NAMES = List.of("site", "result", "proposal", "review", "prices");

    private Schemas() {}

    /** What schemas there are. */
    public static List<String> names() {
        return NAMES;
    }

    /** The text of a schema, e.g. that of {@code "site"}. */
    public static Optional<String> find(String name) {
        return NAMES.contains(name) ? Optional.of(text("bondspan-" + name + "-1.schema.json")) : Optional.empty();
    }

    private static String text(String resource) {
        try (InputStream in = Schemas.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program was packed without " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
