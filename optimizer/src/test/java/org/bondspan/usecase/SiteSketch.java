package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A site in whole feet, part by part, to be written with any {@link Pen}. */
final class SiteSketch {
    final List<Function<Pen, String>> head = new ArrayList<>();
    final List<Function<Pen, String>> levels = new ArrayList<>();
    final List<Function<Pen, String>> risers = new ArrayList<>();
    final List<Function<Pen, String>> services = new ArrayList<>();
    final List<Function<Pen, String>> electrodes = new ArrayList<>();
    final List<Function<Pen, String>> paths = new ArrayList<>();

    String write(Pen pen) {
        String unit = "\"lengthUnit\": \"" + pen.unit() + "\", ";
        String first = head.stream().map(part -> part.apply(pen) + ", ").collect(Collectors.joining());
        return "{\"format\": \"bondspan-site/1\", " + unit + first + list("levels", levels, pen) + ",\n"
                + list("risers", risers, pen) + ",\n" + list("services", services, pen) + ",\n"
                + list("electrodes", electrodes, pen) + ",\n" + list("paths", paths, pen) + "}";
    }

    private static String list(String name, List<Function<Pen, String>> parts, Pen pen) {
        return parts.stream()
                .map(part -> "{" + part.apply(pen) + "}")
                .collect(Collectors.joining(",\n  ", "\"" + name + "\": [", "]"));
    }
}
