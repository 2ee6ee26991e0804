package org.bondspan.site;

import java.util.List;

/**
 * A service disconnect.
 *
 * @param supply the service drop or lateral that feeds it; services of one supply add up their conductors
 * @param connections accessible points on the grounded service conductor or its bus, all in one enclosure or lineup
 */
public record Service(String id, String supply, PhaseConductors ungrounded, List<Connection> connections) {
    public Service {
        connections = List.copyOf(connections);
    }
}
