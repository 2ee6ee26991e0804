package org.bondspan.layout;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.WireSize;

/**
 * An electrode and what has become of it.
 *
 * @param need copper size that it calls for; empty when it need not be connected
 * @param reason why it has that state
 * @param way ids passed from the first service to it, conductors and paths in order; empty unless bonded
 */
public record ElectrodeState(
        String id,
        String type,
        State state,
        Optional<WireSize> need,
        List<String> basis,
        String reason,
        List<String> way) {
    public ElectrodeState {
        basis = List.copyOf(basis);
        way = List.copyOf(way);
    }
}
