package org.bondspan.takeoff;

import java.util.Optional;
import org.bondspan.layout.End;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/**
 * One row of a take-off.
 *
 * @param item id of the conductor, joint or wall
 * @param installation how it is installed; empty for what is no length
 */
public record Row(
        RowKind kind,
        String item,
        String description,
        Optional<WireSize> size,
        String installation,
        Optional<End> from,
        Optional<End> to,
        Quantity quantity,
        Weight weight,
        RowMoney money) {}
