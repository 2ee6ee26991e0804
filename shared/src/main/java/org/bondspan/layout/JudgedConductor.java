package org.bondspan.layout;

import java.util.Optional;
import org.bondspan.site.Material;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * A proposed conductor as the review sees it.
 *
 * @param needed the size that it must have, in its own material; empty when nothing depends on it
 * @param neededFor between which service and what that need arises, in words; empty text when nothing depends on it
 * @param length as stated and no less than needed, else as drawn with its make-up, else straight from end to end; empty
 *     when nothing tells it
 * @param lengthFrom which of these
 */
public record JudgedConductor(
        String id,
        WireSize size,
        Material material,
        Optional<WireSize> needed,
        String neededFor,
        Optional<Length> length,
        LengthFrom lengthFrom) {
    public JudgedConductor {
        if (length.isPresent() == (lengthFrom == LengthFrom.NOTHING)) {
            throw new IllegalArgumentException("length: " + length + " from " + lengthFrom);
        }
    }
}
