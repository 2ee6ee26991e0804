package org.bondspan.site;

import java.util.Optional;
import org.bondspan.units.Length;

/**
 * A point at which a conductor may land on a service or an electrode.
 *
 * @param fromEntrance for a water-pipe electrode without a path: distance along the pipe from the point of entrance
 */
public record Connection(Optional<String> id, Position position, Optional<Length> fromEntrance) {}
