package org.bondspan.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.Carrier;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.SamePlace;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.Driven;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/** The metal of a site as vertices of one proposed tie: what a way may pass, and what it may not. */
final class MetalNodes {
    private final SiteMetal metal;
    private final UnlawfulLinks unlawful;
    private final Map<String, Node> electrodes = new HashMap<>();
    private final Map<String, Node> paths = new HashMap<>();
    private final Map<String, Node> beyond = new HashMap<>();
    private final Map<Position, Node> onRing = new HashMap<>();

    MetalNodes(SiteMetal metal) {
        this.metal = metal;
        this.unlawful = new UnlawfulLinks(metal);
    }

    /** The vertex of an electrode: the path that it is part of, or one of its own. */
    Node electrode(String id) {
        Optional<String> path = metal.findPathOf(metal.electrode(id));
        return path.isPresent() ? path(path.get()) : electrodes.computeIfAbsent(id, this::newElectrode);
    }

    private Node newElectrode(String id) {
        Electrode electrode = metal.electrode(id);
        boolean driven = electrode instanceof Driven;
        boolean pipe = electrode instanceof WaterPipeElectrode
                && !metal.system().leftOut().containsKey(id);
        return driven || pipe
                ? Node.open(Kind.ELECTRODE, id)
                : new Node(Kind.ELECTRODE, id, Optional.empty(), List.of(unlawful.through(electrode)));
    }

    /** Where a conductor lands on an electrode: a water pipe without a path carries within 5 ft only. */
    Node landing(String electrode, Optional<String> connection) {
        Node node = electrode(electrode);
        if (node.kind() == Kind.PATH || !(metal.electrode(electrode) instanceof WaterPipeElectrode)) {
            return node;
        }
        List<Connection> meant = metal.places().connections(electrode, connection);
        boolean tooFar = !meant.isEmpty() && meant.stream().allMatch(MetalNodes::isTooFarIn);
        return tooFar ? beyond(node, MediaThatMayCarry.FIVE_FEET) : node;
    }

    /** Where copper lands on a ring that carries: what meets at one connection of it is joined without the ring. */
    Optional<Node> findLanding(Carrier.Ring ring, Position place) {
        return ring.electrode().connections().stream()
                .map(Connection::position)
                .filter(connection -> SamePlace.isSame(connection, place))
                .findFirst()
                .map(connection -> onRing.computeIfAbsent(connection, ignored -> newOnRing(ring)));
    }

    private Node newOnRing(Carrier.Ring ring) {
        Node node = Node.open(Kind.COPPER, ring.path().id());
        Span.touch(node, path(ring.path().id()), List.of());
        return node;
    }

    /** Likewise at one of its connections. */
    Node landing(Electrode electrode, Connection connection) {
        Optional<Node> onRing = metal.findPathOf(electrode)
                .flatMap(metal::findRing)
                .flatMap(ring -> findLanding(ring, connection.position()));
        return onRing.orElseGet(() -> landingOffRings(electrode, connection));
    }

    private Node landingOffRings(Electrode electrode, Connection connection) {
        Node node = electrode(electrode.id());
        boolean tooFar = electrode instanceof WaterPipeElectrode && isTooFarIn(connection);
        return tooFar && node.kind() != Kind.PATH ? beyond(node, MediaThatMayCarry.FIVE_FEET) : node;
    }

    private static boolean isTooFarIn(Connection connection) {
        return connection
                .fromEntrance()
                .map(MediaThatMayCarry.FIVE_FEET::isLessThan)
                .orElse(false);
    }

    /** The vertex of a path; of a pipe, that of its usable part. */
    Node path(String id) {
        if (metal.path(id) instanceof RingPath ring && metal.findCarrier(id).isEmpty()) {
            return electrodes.computeIfAbsent(ring.electrode(), this::newElectrode);
        }
        return paths.computeIfAbsent(id, this::newPath);
    }

    private Node newPath(String id) {
        Optional<Carrier> carrier = metal.findCarrier(id);
        if (carrier.isPresent()) {
            Optional<WireSize> capacity = carrier.filter(Carrier.Ring.class::isInstance)
                    .map(ring -> ((Carrier.Ring) ring).electrode().conductorSize());
            return new Node(Kind.PATH, id, capacity, List.of());
        }
        return new Node(Kind.PATH, id, Optional.empty(), List.of(unlawful.through(metal.path(id))));
    }

    /** Where a conductor lands on a path so far along it; an unknown distance counts as usable. */
    Node landing(String path, Length distance) {
        Node node = path(path);
        return metal.findCarrier(path)
                .filter(carrier -> carrier instanceof Carrier.Pipe pipe && isBeyond(pipe, distance))
                .map(carrier -> beyond(node, ((Carrier.Pipe) carrier).usable()))
                .orElse(node);
    }

    private static boolean isBeyond(Carrier.Pipe pipe, Length distance) {
        return UnlawfulLinks.isPartlyUsable(pipe) && pipe.usable().isLessThan(distance);
    }

    /** Pipe beyond its usable part: joined with the rest, and nothing lawful about passing it. */
    private Node beyond(Node pipe, Length usable) {
        return beyond.computeIfAbsent(pipe.id(), id -> {
            Offence offence = unlawful.beyond(id, usable);
            Node node = new Node(pipe.kind(), id, Optional.empty(), List.of(offence));
            Span.touch(node, pipe, List.of(offence));
            return node;
        });
    }

    /** Whether a vertex stands for pipe beyond its usable part. */
    boolean isBeyond(Node node) {
        return beyond.get(node.id()) == node;
    }
}
