package org.bondspan.review;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.bondspan.code.SamePlace;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;

/** Installed conductors as vertices of one proposed tie: one wherever something joins, places within 0.05 ft as one. */
final class InstalledNodes {
    private final Map<String, TreeMap<Length, Node>> joined = new HashMap<>();

    /** The vertex so far along an installed conductor; an unknown distance counts as its start. */
    Node at(String conductor, Optional<Length> distance) {
        TreeMap<Length, Node> places = joined.computeIfAbsent(conductor, ignored -> new TreeMap<>());
        Length along = distance.orElse(Length.ZERO);
        Map.Entry<Length, Node> before = places.floorEntry(along);
        Map.Entry<Length, Node> after = places.ceilingEntry(along);
        if (before != null && SamePlace.isSame(before.getKey(), along)) {
            return before.getValue();
        }
        if (after != null && SamePlace.isSame(after.getKey(), along)) {
            return after.getValue();
        }
        Node node = Node.open(Kind.COPPER, conductor);
        places.put(along, node);
        return node;
    }

    /** Joins the vertices along each installed conductor; nothing can be placed on it afterwards. */
    void join(InstalledConductor conductor) {
        Optional<Node> before = Optional.empty();
        for (Node node : joined.getOrDefault(conductor.id(), new TreeMap<>()).values()) {
            before.ifPresent(last -> Span.installed(last, node, conductor));
            before = Optional.of(node);
        }
    }
}
