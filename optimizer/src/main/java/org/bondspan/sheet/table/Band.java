package org.bondspan.sheet.table;

import java.awt.Graphics2D;

/** A strip of paper of fixed height; lengths in points. */
public interface Band {
    double height();

    /** Paints it with its upper left corner there. */
    void paint(Graphics2D g, double x, double y);
}
