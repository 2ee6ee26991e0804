package org.bondspan.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.bondspan.site.Site;

/** Files that lie beside the tests. */
final class Fixtures {
    private Fixtures() {}

    static Site fullSite() {
        return SiteReader.parse(text("full.site.json"), "full.site.json");
    }

    static String text(String name) {
        try (InputStream in = Objects.requireNonNull(Fixtures.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
