package org.bondspan.report.document;

import java.util.List;
import java.util.stream.Stream;

/** A report: its title and its parts. */
public record Document(String title, String subtitle, List<Part> parts) {
    public Document {
        parts = List.copyOf(parts);
    }

    /** All that it says, figures left aside, which say what they show themselves. */
    Stream<String> words() {
        return Stream.concat(Stream.of(title, subtitle), parts.stream().flatMap(Part::words));
    }
}
