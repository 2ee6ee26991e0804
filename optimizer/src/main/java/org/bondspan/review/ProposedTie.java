package org.bondspan.review;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.bondspan.code.Carrier;
import org.bondspan.code.Obligation;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** A proposal as a graph that may have loops and parallel ways; lawful and unlawful links alike. */
final class ProposedTie {
    private final SiteMetal metal;
    private final MetalNodes nodes;
    private final CopperNodes copper;
    private final JointMeetings joints;
    private final InstalledNodes installed = new InstalledNodes();
    private final Ends ends;
    private final Map<String, Node> services = new HashMap<>();
    private final Map<String, List<Node>> endsById = new HashMap<>();
    private final DeclaredLinks declared;

    /** @param offences what is unlawful about a conductor whatever its size */
    ProposedTie(SiteMetal metal, Ends ends, Proposal proposal, Function<ProposedConductor, List<Offence>> offences) {
        this.metal = metal;
        this.ends = ends;
        this.nodes = new MetalNodes(metal);
        this.copper = new CopperNodes(proposal);
        this.joints = new JointMeetings(metal, ends, copper, proposal);
        metal.site().services().forEach(service -> services.put(service.id(), Node.open(Kind.SERVICE, service.id())));
        addFrameTies();
        addInstalled();
        proposal.conductors().forEach(conductor -> addConductor(conductor, offences.apply(conductor)));
        listInstalled().forEach(this::addJoints);
        this.declared = new DeclaredLinks(this, metal, ends);
        proposal.links().forEach(declared::add);
        joinPlacesOnInstalled();
        listInstalled().forEach(installed::join);
    }

    /** Hold-down bolts tie footing bars to a frame: the electrode hangs from it, and the bolts lead nowhere else. */
    private void addFrameTies() {
        for (ConcreteEncased bars : metal.site().listElectrodes(ConcreteEncased.class)) {
            metal.findTiedFrame(bars).ifPresent(frame -> Span.hang(nodes.path(frame), nodes.electrode(bars.id())));
        }
    }

    /** An installed conductor is landed on the connections on its line, and on the metal that it meets. */
    private void addInstalled() {
        for (InstalledConductor conductor : listInstalled()) {
            metal.site()
                    .services()
                    .forEach(service -> service.connections().stream()
                            .map(Connection::position)
                            .forEach(place -> landInstalled(conductor, place, service(service.id()))));
            metal.site().electrodes().forEach(electrode -> landInstalled(conductor, electrode));
            metal.site().paths().stream()
                    .filter(path -> path instanceof StructuralFrame || path instanceof WaterPiping)
                    .forEach(path -> meetings(conductor, path.id())
                            .forEach(place -> landInstalled(conductor, place, landing(path.id(), place))));
            listInstalled().stream()
                    .filter(other -> !other.id().equals(conductor.id()))
                    .forEach(other -> meetings(conductor, other.id())
                            .forEach(place -> landInstalled(conductor, place, landing(other.id(), place))));
        }
    }

    private List<InstalledConductor> listInstalled() {
        return metal.site().listPaths(InstalledConductor.class);
    }

    private Set<Position> meetings(InstalledConductor conductor, String path) {
        return metal.meetings(conductor.id(), path);
    }

    /** A water pipe with a path is met along it, not at its own connections. */
    private void landInstalled(InstalledConductor conductor, Electrode electrode) {
        boolean byPath = electrode instanceof WaterPipeElectrode
                && metal.findPathOf(electrode).isPresent();
        Stream<Connection> connections = byPath ? Stream.empty() : electrode.connections().stream();
        connections.forEach(
                connection -> landInstalled(conductor, connection.position(), nodes.landing(electrode, connection)));
    }

    private void landInstalled(InstalledConductor conductor, Position place, Node node) {
        metal.places()
                .findDistance(conductor.id(), place)
                .ifPresent(along -> Span.touch(installed.at(conductor.id(), Optional.of(along)), node, List.of()));
    }

    private Node landing(String path, Position place) {
        return landing(path, metal.places().findDistance(path, place));
    }

    private void addConductor(ProposedConductor conductor, List<Offence> offences) {
        List<Node> landed = ends(conductor);
        new ConductorRun(copper, joints.stops(conductor), ends, conductor, offences).lay(landed.get(0), landed.get(1));
    }

    /** Where a conductor begins and ends. */
    List<Node> ends(ProposedConductor conductor) {
        return endsById.computeIfAbsent(
                conductor.id(), ignored -> List.of(node(conductor, conductor.from()), node(conductor, conductor.to())));
    }

    private Node node(ProposedConductor conductor, End end) {
        return ends.find(conductor, end)
                .flatMap(place -> findRing(end).flatMap(ring -> nodes.findLanding(ring, place)))
                .orElseGet(() -> end instanceof End.OnPath on
                        ? landing(on.path(), ends.findDistance(conductor, on))
                        : node(end));
    }

    /** The ring at which an end lands, if it is one that carries. */
    private Optional<Carrier.Ring> findRing(End end) {
        if (end instanceof End.OnPath on) {
            return metal.findRing(on.path());
        }
        return end instanceof End.AtElectrode at
                ? metal.findPathOf(metal.electrode(at.electrode())).flatMap(metal::findRing)
                : Optional.empty();
    }

    /** The vertex that an end names. */
    Node node(End end) {
        if (end instanceof End.AtService at) {
            return service(at.service());
        }
        if (end instanceof End.AtElectrode at) {
            return nodes.landing(at.electrode(), at.connection());
        }
        return end instanceof End.OnPath on ? landing(on.path(), on.distance()) : copper.node(end);
    }

    private Node landing(String path, Optional<Length> distance) {
        if (metal.path(path) instanceof InstalledConductor) {
            return installed.at(path, distance);
        }
        if (metal.path(path) instanceof CopperLine) {
            return distance.flatMap(along -> metal.places().findPlace(path, along))
                    .map(copper::place)
                    .orElseGet(() -> nodes.path(path));
        }
        return distance.map(along -> nodes.landing(path, along)).orElseGet(() -> nodes.path(path));
    }

    /** A joint may tap an installed conductor. */
    private void addJoints(InstalledConductor conductor) {
        joints.stops(conductor)
                .forEach(stop ->
                        Span.touch(stop.node(), installed.at(conductor.id(), Optional.of(stop.at())), List.of()));
    }

    /** Copper joined at a place on an installed conductor is joined with it. */
    private void joinPlacesOnInstalled() {
        for (InstalledConductor conductor : listInstalled()) {
            copper.placesWithoutJoint().forEach((place, node) -> landInstalled(conductor, place, node));
        }
    }

    Node service(String id) {
        return Optional.ofNullable(services.get(id))
                .orElseThrow(() -> new IllegalArgumentException("no service " + id));
    }

    /** The vertices at which an obligation is met. */
    Set<Node> goals(Obligation obligation) {
        Set<Node> goals = new LinkedHashSet<>();
        for (String member : obligation.members()) {
            boolean electrode = metal.findElectrode(member).isPresent();
            goals.add(electrode ? nodes.electrode(member) : nodes.path(member));
        }
        return goals;
    }

    MetalNodes nodes() {
        return nodes;
    }

    JointMeetings joints() {
        return joints;
    }

    /** Unlawful links that the proposal declares: always said. */
    List<Offence> declared() {
        return declared.offences();
    }
}
