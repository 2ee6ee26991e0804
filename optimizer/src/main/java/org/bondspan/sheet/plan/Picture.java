package org.bondspan.sheet.plan;

import java.util.List;

/** A level with its answer, drawn in plan units (nanometres, x east, y north). Immutable. */
public record Picture(String level, List<Item> items, List<Note> notes) {
    public Picture {
        items = List.copyOf(items);
        notes = List.copyOf(notes);
    }

    /** Around all items. */
    public Bounds bounds() {
        return Bounds.around(
                items.stream().flatMap(item -> item.places().stream()).toList());
    }
}
