package org.bondspan.site;

import java.util.List;

/** A place where copper may run vertically between the floors or lines of its levels. */
public record Riser(String id, PlanPoint at, List<String> levels) {
    public Riser {
        levels = List.copyOf(levels);
    }
}
