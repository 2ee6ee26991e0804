package org.bondspan.site;

import java.util.List;

/** A drawn line on one level, at least two vertices. */
public record Line(String level, List<LineVertex> vertices) {
    public Line {
        vertices = List.copyOf(vertices);
    }
}
