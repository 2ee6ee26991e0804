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
        String why) {
    public Conductor {
        line = List.copyOf(line);
        serves = List.copyOf(serves);
        basis = List.copyOf(basis);
    }
}
