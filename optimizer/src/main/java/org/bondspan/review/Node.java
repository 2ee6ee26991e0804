package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.WireSize;

/**
 * A vertex of the proposed tie.
 *
 * @param id of the electrode, path or joint; the key of a place otherwise
 * @param passable whether a way may pass at all, lawfully or not: not through a service
 * @param capacity the largest copper need that may pass, on rings and installed conductors
 * @param offences what is unlawful about passing it; none about ending there
 */
record Node(String key, String id, boolean passable, Optional<WireSize> capacity, List<Offence> offences) {
    Node {
        offences = List.copyOf(offences);
    }

    static Node open(String key, String id) {
        return new Node(key, id, true, Optional.empty(), List.of());
    }
}
