package org.bondspan.report.document;

import java.util.List;

/** A report: its title and its parts. */
public record Document(String title, String subtitle, List<Part> parts) {
    public Document {
        parts = List.copyOf(parts);
    }
}
