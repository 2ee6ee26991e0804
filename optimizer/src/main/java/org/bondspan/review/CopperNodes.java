package org.bondspan.review;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.bondspan.code.SamePlace;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** The places of one proposal where copper joins copper: taps, joints, places. */
final class CopperNodes {
    private final Proposal proposal;
    private final Map<String, Map<Length, Node>> taps = new HashMap<>();
    private final Map<String, Node> joints = new HashMap<>();
    private final Map<Position, Node> places = new LinkedHashMap<>();

    CopperNodes(Proposal proposal) {
        this.proposal = proposal;
        proposal.joints().forEach(joint -> joint.id().ifPresent(id -> nameJoint(id, joint.place())));
        listEnds().forEach(end -> {
            if (end instanceof End.OnConductor tap) {
                tap(tap);
            }
        });
    }

    private Stream<End> listEnds() {
        return Stream.concat(
                proposal.conductors().stream().flatMap(conductor -> Stream.of(conductor.from(), conductor.to())),
                proposal.links().stream().flatMap(link -> Stream.of(link.from(), link.to())));
    }

    private void nameJoint(String id, Optional<Position> place) {
        joints.put(id, place.map(this::place).orElseGet(() -> Node.open(Kind.COPPER, id)));
    }

    /** The vertex of an end at copper. */
    Node node(End end) {
        if (end instanceof End.OnConductor on) {
            return tap(on);
        }
        if (end instanceof End.AtJoint at) {
            return joints.computeIfAbsent(at.joint(), id -> Node.open(Kind.COPPER, id));
        }
        if (end instanceof End.AtPlace at) {
            return place(at.place());
        }
        throw new IllegalArgumentException("not at copper: " + end);
    }

    private Node tap(End.OnConductor on) {
        return taps.computeIfAbsent(on.conductor(), ignored -> new TreeMap<>())
                .computeIfAbsent(on.at(), ignored -> Node.open(Kind.COPPER, on.conductor()));
    }

    /** Places within 0.05 ft are one. */
    Node place(Position place) {
        return places.entrySet().stream()
                .filter(known -> SamePlace.isSame(known.getKey(), place))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> places.computeIfAbsent(place, ignored -> Node.open(Kind.COPPER, "place")));
    }

    /** Places named as ends, without those of joints: a joint lists what meets there. */
    Map<Position, Node> placesWithoutJoint() {
        Map<Position, Node> bare = new LinkedHashMap<>(places);
        bare.values().removeAll(joints.values());
        return bare;
    }

    /** The taps on a conductor by their distance from its {@code from} end, in order. */
    Map<Length, Node> taps(String conductor) {
        return taps.getOrDefault(conductor, Map.of());
    }

    /** The vertex of a joint: by its id or place, else where one of its conductors ends at copper. */
    Optional<Node> find(ProposedJoint joint) {
        if (joint.id().isPresent()) {
            return joint.id().map(joints::get);
        }
        return joint.place()
                .map(this::place)
                .or(() -> proposal.conductors().stream()
                        .filter(conductor -> joint.conductors().contains(conductor.id()))
                        .flatMap(CopperNodes::endsAtPlaces)
                        .map(this::node)
                        .findFirst());
    }

    private static Stream<End> endsAtPlaces(ProposedConductor conductor) {
        return Stream.of(conductor.from(), conductor.to())
                .filter(end -> end instanceof End.AtPlace || end instanceof End.AtJoint);
    }
}
