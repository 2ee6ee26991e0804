package org.bondspan.code;

import java.util.Optional;
import org.bondspan.site.Material;
import org.bondspan.units.WireSize;

/**
 * The size that a conductor needs toward one thing that must be connected: Table 250.66, and never more than the limit
 * that 250.66(A) to (C) sets for conductors to that kind alone.
 *
 * @param limit largest size ever required, if there is one below the table's end
 * @param limitRule the section that sets the limit
 */
public record Need(Optional<WireSize> limit, Rule limitRule) {
    /** Table 250.66 without a limit of its own. */
    public static final Need TABLE = new Need(Optional.empty(), Rule.CONDUCTOR_SIZE);

    /** Rods, pipes, plates. */
    public static final Need DRIVEN = new Need(Optional.of(WireSize.AWG_6), Rule.DRIVEN_SIZE);

    /** Concrete-encased electrodes. */
    public static final Need ENCASED = new Need(Optional.of(WireSize.AWG_4), Rule.CONCRETE_ENCASED_SIZE);

    /** A ring of that conductor. */
    public static Need ring(WireSize conductor) {
        return new Need(Optional.of(conductor), Rule.RING_SIZE);
    }

    /** Copper size toward services with that area in all. */
    public WireSize size(Material material, long circularMils) {
        WireSize table = Table25066.copperFor(material, circularMils);
        return limit.map(most -> WireSize.smallerOf(most, table)).orElse(table);
    }

    /** The section that {@link #size} comes from: the limit's where the limit is what decides. */
    public Rule basis(Material material, long circularMils) {
        WireSize table = Table25066.copperFor(material, circularMils);
        boolean limited =
                limit.isPresent() && table.circularMils() > limit.get().circularMils();
        return limited ? limitRule : Rule.CONDUCTOR_SIZE;
    }
}
