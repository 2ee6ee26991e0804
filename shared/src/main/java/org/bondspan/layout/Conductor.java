package org.bondspan.layout;

import java.util.List;
import org.bondspan.site.Position;
import org.bondspan.units.WireSize;

/**
 * New copper between two places where something joins, of one size throughout.
 *
 * @param line its run, from {@code from} to {@code to}; at least one position
 * @param serves ids of what lies beyond it, seen from the first service
 * @param basis sections that call for it and give its size
 * @param why how its size was found, in words
 * @param pieces its whole length by how high it runs, in order
 * @param crosses ids of walls, one for each time that it passes one
 */
public record Conductor(
        String id,
        WireSize size,
        Role role,
        Protection protection,
        End from,
        End to,
        List<Position> line,
        RunLength length,
        List<String> serves,
        List<String> basis,
        String why,
        List<Piece> pieces,
        List<String> crosses) {
    public Conductor {
        line = List.copyOf(line);
        serves = List.copyOf(serves);
        basis = List.copyOf(basis);
        pieces = List.copyOf(pieces);
        crosses = List.copyOf(crosses);
    }
}
