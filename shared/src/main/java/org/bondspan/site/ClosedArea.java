package org.bondspan.site;

import java.util.List;

/** A part of a level where no conductor may run; its edges stay free. The outline is a simple polygon. */
public record ClosedArea(String id, List<PlanPoint> outline) {
    public ClosedArea {
        outline = List.copyOf(outline);
    }
}
