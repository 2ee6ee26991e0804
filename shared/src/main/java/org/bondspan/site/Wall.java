package org.bondspan.site;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.Money;

/**
 * A wall of a level, from floor to ceiling.
 *
 * @param line at least two vertices
 * @param crossing installed cost of passing it once, such as a fire-stopped sleeve
 */
public record Wall(String id, List<PlanPoint> line, Optional<Money> crossing) {
    public Wall {
        line = List.copyOf(line);
    }
}
