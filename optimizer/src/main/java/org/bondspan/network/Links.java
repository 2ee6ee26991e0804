package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.Carrier;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Rule;
import org.bondspan.layout.End;
import org.bondspan.layout.Link;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;

/** What carries in a tie without new copper: through frames, pipes and rings, and along installed conductors. */
final class Links {
    private final RouteProblem problem;
    private final MediaThatMayCarry media;
    private final Tie tie;
    private final Meetings meetings;
    private final Places places;
    private final List<Link> links = new ArrayList<>();

    /** An end of a link with its place, where it is at one. */
    private record Gate(End end, Optional<Integer> place) {}

    Links(RouteProblem problem, MediaThatMayCarry media, Tie tie, Meetings meetings, Places places) {
        this.problem = problem;
        this.media = media;
        this.tie = tie;
        this.meetings = meetings;
        this.places = places;
    }

    List<Link> list(List<Stretch> stretches) {
        tie.outward().stream().filter(tie::isMetal).forEach(this::addThroughMetal);
        stretches.stream().filter(this::isInstalled).forEach(this::addInstalled);
        return links;
    }

    private void addThroughMetal(int metal) {
        String path = problem.network().metalPath(metal);
        Gate entrance = gates(metal, tie.parent(metal)).get(0);
        List<Gate> exits =
                new ArrayList<>(gates(metal, tie.parent(metal)).stream().skip(1).toList());
        tie.children(metal).forEach(edge -> exits.addAll(gates(metal, edge)));
        for (Gate exit : exits) {
            Carrier carrier = media.find(path).orElseThrow();
            links.add(link(path, carrier.path().medium(), entrance, exit, basis(carrier)));
        }
    }

    private static List<String> basis(Carrier carrier) {
        if (carrier instanceof Carrier.Frame) {
            return List.of(Rule.STRUCTURAL_FRAME.section());
        }
        return carrier instanceof Carrier.Pipe
                ? List.of(Rule.WATER_PIPE_FIVE_FEET.section())
                : List.of(Rule.ELECTRODE_BONDING_JUMPER.section(), Rule.CONDUCTOR_SIZE.section());
    }

    /** The ends that an edge of the tie gives to links of this metal: its own, and things landed on without length. */
    private List<Gate> gates(int metal, TieEdge edge) {
        int other = edge.other(metal);
        String path = problem.network().metalPath(metal);
        if (Tie.isTerminal(other)) {
            String of = tie.chosenAttachment(Tie.terminal(other)).landing().of();
            return of.equals(path)
                    ? List.of()
                    : List.of(new Gate(new End.AtElectrode(of, Optional.empty()), Optional.empty()));
        }
        if (edge.isCarried()) {
            return List.of(new Gate(places.onInstalled(edge.carriedBy(), other), Optional.of(other)));
        }
        List<Gate> gates = new ArrayList<>();
        findTerminalAt(edge, metal)
                .ifPresentOrElse(
                        terminal -> gates.add(new Gate(places.terminalEnd(terminal), Optional.of(other))),
                        () -> gates.add(new Gate(places.onMetal(metal, other), Optional.of(other))));
        meetings.all().stream()
                .filter(meeting -> meeting.metals().contains(metal) && meetings.isAt(meeting, other))
                .flatMap(meeting -> meeting.hanging().stream())
                .forEach(thing -> gates.add(new Gate(places.landedOn(thing, other), Optional.of(other))));
        return gates;
    }

    /** The terminal that copper without length joins to metal. */
    private Optional<Integer> findTerminalAt(TieEdge landing, int metal) {
        return meetings.landedWithoutLength().stream()
                .filter(stretch -> stretch.edges().contains(landing))
                .map(stretch -> stretch.from() == metal ? stretch.to() : stretch.from())
                .map(Tie::terminal)
                .findFirst();
    }

    private boolean isInstalled(Stretch stretch) {
        return problem.network().site().listPaths(InstalledConductor.class).stream()
                .anyMatch(conductor -> conductor.id().equals(stretch.first().carriedBy()));
    }

    private void addInstalled(Stretch stretch) {
        String conductor = stretch.first().carriedBy();
        links.add(link(
                conductor,
                "conductor",
                gateOfInstalled(conductor, stretch.from(), stretch.first()),
                gateOfInstalled(
                        conductor,
                        stretch.to(),
                        stretch.edges().get(stretch.edges().size() - 1)),
                List.of(Rule.ELECTRODE_BONDING_JUMPER.section(), Rule.CONDUCTOR_SIZE.section())));
    }

    private Gate gateOfInstalled(String conductor, int vertex, TieEdge last) {
        int place = last.other(vertex);
        if (Tie.isTerminal(vertex)) {
            return new Gate(places.terminalEnd(Tie.terminal(vertex)), Optional.of(place));
        }
        if (tie.isMetal(vertex)) {
            return new Gate(places.onMetal(vertex, place), Optional.of(place));
        }
        Meeting meeting = meetings.at(vertex);
        Optional<Gate> landed = meeting.metals().stream()
                .findFirst()
                .map(metal -> new Gate(places.onMetal(metal, vertex), Optional.of(vertex)));
        if (landed.isPresent()) {
            return landed.get();
        }
        int turn = meeting.installed().stream()
                .map(Stretch::first)
                .map(TieEdge::carriedBy)
                .toList()
                .indexOf(conductor);
        if (turn < meeting.hanging().size()) {
            return new Gate(places.landedOn(meeting.hanging().get(turn), vertex), Optional.of(vertex));
        }
        return new Gate(places.onInstalled(conductor, vertex), Optional.of(vertex));
    }

    private Link link(String path, String medium, Gate from, Gate to, List<String> basis) {
        return new Link(
                path,
                medium,
                from.end(),
                to.end(),
                from.place().map(this::position),
                to.place().map(this::position),
                distance(path, from).distanceTo(distance(path, to)),
                basis);
    }

    private Position position(int place) {
        return problem.network().position(place);
    }

    /** Along the path; the electrode that a pipe continues is at its entrance, distance 0. */
    private Length distance(String path, Gate gate) {
        return gate.place().flatMap(place -> places.findDistance(path, place)).orElse(Length.ZERO);
    }
}
