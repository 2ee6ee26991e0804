package org.bondspan.viewer.state;

import java.util.function.UnaryOperator;

/**
 * One step from a desk to the next.
 *
 * @param name as an undo list would show it
 */
public record Command(String name, UnaryOperator<Desk> change) {
    public Desk on(Desk desk) {
        return change.apply(desk);
    }
}
