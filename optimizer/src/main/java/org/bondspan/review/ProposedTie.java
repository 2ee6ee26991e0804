package org.bondspan.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.bondspan.code.Carrier;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;
import org.jgrapht.Graph;
import org.jgrapht.graph.Pseudograph;

/** A proposal as a graph that may have loops and parallel ways; lawful and unlawful links alike. */
final class ProposedTie {
    private final Site site;
    private final Metal metal;
    private final Proposal proposal;
    private final Graph<String, Span> graph = new Pseudograph<>(Span.class);
    private final Map<String, Node> nodes = new HashMap<>();
    private final List<Position> places = new ArrayList<>();
    private final List<Offence> declared = new ArrayList<>();

    /** @param offences what is unlawful about a conductor whatever its size */
    ProposedTie(Site site, Metal metal, Proposal proposal, Function<ProposedConductor, List<Offence>> offences) {
        this.site = site;
        this.metal = metal;
        this.proposal = proposal;
        site.services().forEach(service -> add(serviceNode(service.id())));
        site.electrodes().forEach(electrode -> add(metal.electrode(electrode.id())));
        site.paths().forEach(path -> add(metal.path(path.id(), Optional.empty())));
        addTies();
        addPipesBeyond();
        addInstalled();
        proposal.conductors().forEach(conductor -> addConductor(conductor, offences.apply(conductor)));
        proposal.links().forEach(this::addLink);
    }

    private static Node serviceNode(String id) {
        return new Node("service " + id, id, false, Optional.empty(), List.of());
    }

    private String add(Node node) {
        nodes.putIfAbsent(node.key(), node);
        graph.addVertex(node.key());
        return node.key();
    }

    private void touch(String a, String b, List<Offence> offences) {
        if (!a.equals(b)) {
            graph.addEdge(a, b, new Span(Optional.empty(), offences));
        }
    }

    /** Hold-down bolts tie footing bars to a frame: the electrode hangs from the frame. */
    private void addTies() {
        for (ConcreteEncased bars : site.listElectrodes(ConcreteEncased.class)) {
            metal.findTiedFrame(bars)
                    .ifPresent(frame ->
                            touch(Metal.key(frame), metal.electrode(bars.id()).key(), List.of()));
        }
    }

    private void addPipesBeyond() {
        for (Carrier carrier : metal.media().carriers()) {
            if (carrier instanceof Carrier.Pipe pipe) {
                String id = pipe.path().id();
                Length beyond = pipe.usable().plus(Length.ofNanometres(1));
                String far = add(metal.path(id, Optional.of(beyond)));
                touch(far, Metal.key(id), List.of(metal.beyondUsable(id, pipe.usable())));
            }
        }
    }

    /** An installed conductor is landed on what lies on its line, and on other metal that it meets. */
    private void addInstalled() {
        for (InstalledConductor installed : site.listPaths(InstalledConductor.class)) {
            String key = Metal.key(installed.id());
            for (Service service : site.services()) {
                touchWhereLanded(installed.id(), serviceNode(service.id()).key(), service.connections());
            }
            for (Electrode electrode : site.electrodes()) {
                touchWhereLanded(installed.id(), metal.electrode(electrode.id()).key(), electrode.connections());
            }
            site.paths().stream()
                    .map(path -> path.id())
                    .filter(id -> !id.equals(installed.id()) && meet(installed.id(), id))
                    .forEach(id -> touch(key, metal.path(id, Optional.empty()).key(), List.of()));
        }
    }

    private void touchWhereLanded(String installed, String node, List<Connection> connections) {
        if (connections.stream().anyMatch(connection -> metal.isAt(installed, connection.position()))) {
            touch(Metal.key(installed), node, List.of());
        }
    }

    private boolean meet(String a, String b) {
        return metal.places(a).stream().anyMatch(place -> metal.isAt(b, place))
                || metal.places(b).stream().anyMatch(place -> metal.isAt(a, place));
    }

    private void addConductor(ProposedConductor conductor, List<Offence> offences) {
        Map<Length, String> taps = new TreeMap<>();
        for (End.OnConductor tap : listTaps(conductor.id())) {
            taps.put(tap.at(), add(Node.open(tapKey(tap), conductor.id())));
        }
        String before = vertex(conductor.from());
        for (String tap : taps.values()) {
            graph.addEdge(before, tap, new Span(Optional.of(conductor), offences));
            before = tap;
        }
        graph.addEdge(before, vertex(conductor.to()), new Span(Optional.of(conductor), offences));
    }

    private List<End.OnConductor> listTaps(String conductor) {
        List<End.OnConductor> taps = new ArrayList<>();
        for (ProposedConductor other : proposal.conductors()) {
            for (End end : List.of(other.from(), other.to())) {
                if (end instanceof End.OnConductor tap && tap.conductor().equals(conductor)) {
                    taps.add(tap);
                }
            }
        }
        return taps.stream().sorted(Comparator.comparing(End.OnConductor::at)).toList();
    }

    private static String tapKey(End.OnConductor tap) {
        return "tap on " + tap.conductor() + " at " + tap.at().nanometres();
    }

    /** The vertex that an end names. */
    String vertex(End end) {
        if (end instanceof End.AtService at) {
            return add(serviceNode(at.service()));
        }
        if (end instanceof End.AtElectrode at) {
            return add(metal.electrode(at.electrode()));
        }
        if (end instanceof End.OnPath on) {
            return add(metal.path(on.path(), on.distance()));
        }
        if (end instanceof End.OnConductor tap) {
            return add(Node.open(tapKey(tap), tap.conductor()));
        }
        if (end instanceof End.AtJoint at) {
            return add(Node.open("joint " + at.joint(), at.joint()));
        }
        return add(Node.open("place " + placeNumber(((End.AtPlace) end).place()), "place"));
    }

    private int placeNumber(Position place) {
        for (int i = 0; i < places.size(); i++) {
            if (isSame(places.get(i), place)) {
                return i;
            }
        }
        places.add(place);
        return places.size() - 1;
    }

    private static boolean isSame(Position a, Position b) {
        long most = LineLengths.SAME_PLACE.nanometres();
        return a.level().equals(b.level())
                && Math.abs(a.at().x() - b.at().x()) <= most
                && Math.abs(a.at().y() - b.at().y()) <= most
                && a.height().distanceTo(b.height()).nanometres() <= most;
    }

    private void addLink(ProposedLink link) {
        Node through = metal.path(link.path(), Optional.empty());
        declared.addAll(through.offences());
        for (End end : List.of(link.from(), link.to())) {
            String vertex = vertex(end);
            if (!vertex.equals(through.key()) && !graph.containsEdge(vertex, through.key())) {
                touch(vertex, through.key(), doubts(link, end, through));
            }
        }
    }

    /** A declared link may end at what is part of the metal or lies on it; anything else is not joined by it. */
    private List<Offence> doubts(ProposedLink link, End end, Node through) {
        boolean unlawfulAnyway = !through.offences().isEmpty();
        boolean elsewhere = end instanceof End.OnPath on && !on.path().equals(link.path());
        if (unlawfulAnyway || (!elsewhere && liesOn(link.path(), end))) {
            return List.of();
        }
        String what = end instanceof End.AtElectrode at ? at.electrode() : link.path();
        return List.of(new Offence(
                CheckedRule.FRAME_AS_LINK,
                what,
                "The link through " + link.path() + " names an end that is neither part of it nor lies on it.",
                "Land a conductor on both."));
    }

    private boolean liesOn(String path, End end) {
        if (end instanceof End.AtService at) {
            return site.services().stream()
                    .filter(service -> service.id().equals(at.service()))
                    .anyMatch(service -> anyOn(path, service.connections()));
        }
        if (end instanceof End.AtElectrode at) {
            Electrode electrode = metal.findElectrode(at.electrode());
            return !(electrode instanceof ConcreteEncased) && anyOn(path, electrode.connections());
        }
        return end instanceof End.OnPath;
    }

    private boolean anyOn(String path, List<Connection> connections) {
        return connections.stream().anyMatch(connection -> metal.isAt(path, connection.position()));
    }

    Graph<String, Span> graph() {
        return graph;
    }

    Node node(String key) {
        Node node = nodes.get(key);
        if (node == null) {
            throw new IllegalArgumentException("no vertex " + key);
        }
        return node;
    }

    String serviceVertex(String service) {
        return serviceNode(service).key();
    }

    /** Unlawful links that the proposal declares: always said. */
    List<Offence> declared() {
        return declared;
    }
}
