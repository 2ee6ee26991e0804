package org.bondspan.layout;

import java.util.List;
import java.util.Optional;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/**
 * What carries without new copper: a stretch of frame, pipe, ring or installed conductor between two ends.
 *
 * @param length along it, where it is measured; 0 within a frame or ring
 * @param fromPlace where it is entered, for drawing
 * @param toPlace where it is left
 */
public record Link(
        String path,
        String medium,
        End from,
        End to,
        Optional<Position> fromPlace,
        Optional<Position> toPlace,
        Length length,
        List<String> basis) {
    public Link {
        basis = List.copyOf(basis);
    }
}
