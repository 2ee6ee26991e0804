package org.bondspan.code;

import java.util.List;
import org.bondspan.site.Connection;

/** One way to land a conductor on something that must be connected. */
public sealed interface Landing {
    /** The id of the electrode, service, frame or piping that is connected by it. */
    String of();

    /** At one of its own connections. */
    record AtConnection(String of, Connection connection) implements Landing {}

    /** With the frame, pipe or ring that carries: connected as soon as that path is. */
    record WithCarrier(String of, String path) implements Landing {}

    /**
     * Anywhere on a frame or piping that carries nothing itself.
     *
     * @param alsoAt connections of a frame's in-ground members
     */
    record AlongPath(String of, List<Connection> alsoAt) implements Landing {
        public AlongPath {
            alsoAt = List.copyOf(alsoAt);
        }
    }
}
