package org.bondspan.layout;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.WireSize;

/** A frame or piping and what has become of it; fields as in {@link ElectrodeState}. */
public record BondState(
        String path, State state, Optional<WireSize> need, List<String> basis, String reason, List<String> way) {
    public BondState {
        basis = List.copyOf(basis);
        way = List.copyOf(way);
    }
}
