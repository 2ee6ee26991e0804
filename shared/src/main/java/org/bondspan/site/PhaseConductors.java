package org.bondspan.site;

import org.bondspan.units.WireSize;

/** The ungrounded service conductors of one phase: so many sets of one size in parallel. */
public record PhaseConductors(Material material, WireSize size, int sets) {
    /** Circular mils of all sets together. */
    public long area() {
        return size.circularMils() * sets;
    }
}
