package org.bondspan.sheet.table;

import java.awt.Graphics2D;

/** A strip painted by a function. */
public record Painted(double height, Painter painter) implements Band {
    /** Paints with the upper left corner there. */
    @FunctionalInterface
    public interface Painter {
        void paint(Graphics2D g, double x, double y);
    }

    @Override
    public void paint(Graphics2D g, double x, double y) {
        painter.paint(g, x, y);
    }
}
