package org.bondspan.io;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.bondspan.site.Connection;
import org.bondspan.units.Length;

/** Reads the connections of a service or an electrode; their ids, where given, differ within it. */
final class ConnectionReader {
    private ConnectionReader() {}

    static List<Connection> read(Fields fields) {
        return read(fields, connection -> Optional.empty());
    }

    /** Connections of a water-pipe electrode, which may say how far they lie from the point of entrance. */
    static List<Connection> readAlongPipe(Fields fields) {
        return read(fields, connection -> connection.findDistance("fromEntrance"));
    }

    private static List<Connection> read(Fields fields, Function<Fields, Optional<Length>> fromEntrance) {
        Set<String> ids = new HashSet<>();
        return fields.each("connections", "connection", connection -> {
            Optional<String> id = connection.has("id")
                    ? Optional.of(connection.name("id", "Leave the id out, or give it a text"))
                    : Optional.empty();
            connection.find("id");
            if (id.isPresent() && !id.get().isEmpty() && !ids.add(id.get())) {
                connection.report("id", "the id \"" + id.get() + "\" is used twice here", "Give it another id");
            }
            return new Connection(id, Drawn.in(connection).position(), fromEntrance.apply(connection));
        });
    }
}
