package org.bondspan.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.bondspan.io.SiteFile;
import org.bondspan.site.Level;
import org.bondspan.usecase.RouteSite;

/** The sample sites, routed, level by level and sheet size by sheet size. */
final class Samples {
    private static final Path DIRECTORY = Path.of("..", "samples");

    private Samples() {}

    /** One level of a sample, to be drawn on that size. */
    record Case(SheetContent content, Level level, SheetSize size) {
        @Override
        public String toString() {
            return content.site().name() + ", " + level.id() + ", " + size;
        }
    }

    static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (SheetContent content : contents()) {
            for (Level level : content.site().levels()) {
                for (SheetSize size : SheetSize.values()) {
                    cases.add(new Case(content, level, size));
                }
            }
        }
        return cases;
    }

    static List<SheetContent> contents() {
        try (Stream<Path> files = Files.list(DIRECTORY)) {
            return files.filter(file -> file.toString().endsWith(".site.json"))
                    .sorted()
                    .map(SiteFile::read)
                    .map(file -> new SheetContent(
                            file.site(), RouteSite.of(file.site()), file.digest(), "Bondspan of the test"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
