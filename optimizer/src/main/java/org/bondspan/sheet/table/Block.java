package org.bondspan.sheet.table;

import java.util.List;

/** A heading, repeated where the block goes on in another column, and the strips below it. */
public record Block(List<Band> head, List<Band> rows) {
    public Block {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /** The first so many rows. */
    public Block upTo(int row) {
        return new Block(head, rows.subList(0, row));
    }

    /** What is left after so many rows. */
    public Block from(int row) {
        return new Block(head, rows.subList(row, rows.size()));
    }

    /** Height in one piece, in points. */
    public double height() {
        return headHeight() + rows.stream().mapToDouble(Band::height).sum();
    }

    double headHeight() {
        return head.stream().mapToDouble(Band::height).sum();
    }
}
