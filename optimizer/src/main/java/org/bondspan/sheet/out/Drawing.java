package org.bondspan.sheet.out;

import java.awt.Graphics2D;
import java.util.List;

/** Something to be drawn on one sheet. */
public interface Drawing {
    String title();

    /** Width in points, 72 to the inch. */
    double width();

    /** Height in points. */
    double height();

    /** Draws it, one unit to the point, the upper left corner at the origin. */
    void paint(Graphics2D g);

    /** The same cut into strips from top to bottom, where it may go over to another page; as a rule it may not. */
    default List<Drawing> listStrips() {
        return List.of(this);
    }
}
