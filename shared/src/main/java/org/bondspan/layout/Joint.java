package org.bondspan.layout;

import java.util.List;
import org.bondspan.site.Position;

/**
 * A place where copper is tapped.
 *
 * @param conductors ids of the conductors that meet there
 * @param method {@code "exothermic"}, {@code "irreversible"} or {@code "busbar"}, 250.64(C), (D)(1), (F)
 */
public record Joint(String id, Position place, List<String> conductors, String method, List<String> basis) {
    public Joint {
        conductors = List.copyOf(conductors);
        basis = List.copyOf(basis);
    }
}
