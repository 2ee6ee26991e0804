package org.bondspan.report;

import java.util.List;
import java.util.stream.Stream;
import org.bondspan.layout.BondState;
import org.bondspan.layout.ElectrodeState;
import org.bondspan.layout.State;

/**
 * An electrode, a frame or piping, and what has become of it, in the words of tables.
 *
 * @param need copper size, or a dash
 * @param way {@code C1 > frame > C2}; empty unless connected
 */
record Thing(String id, String what, State state, String need, String reason, String way, String rules) {
    /** Electrodes first. */
    static List<Thing> list(List<ElectrodeState> electrodes, List<BondState> bonds) {
        return Stream.concat(electrodes.stream().map(Thing::of), bonds.stream().map(Thing::of))
                .toList();
    }

    static Thing of(ElectrodeState electrode) {
        return new Thing(
                electrode.id(),
                SharedSections.words(electrode.type()),
                electrode.state(),
                SharedSections.need(electrode.need()),
                electrode.reason(),
                String.join(" > ", electrode.way()),
                String.join(", ", electrode.basis()));
    }

    static Thing of(BondState bond) {
        return new Thing(
                bond.path(),
                "frame or piping",
                bond.state(),
                SharedSections.need(bond.need()),
                bond.reason(),
                String.join(" > ", bond.way()),
                String.join(", ", bond.basis()));
    }
}
