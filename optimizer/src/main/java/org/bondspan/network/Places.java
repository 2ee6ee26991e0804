package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.Landing;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.End;
import org.bondspan.site.Line;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.units.Length;

/** Tells in the site's terms where vertices of the tie are. */
final class Places {
    private final Network network;
    private final Site site;
    private final Tie tie;

    Places(RouteProblem problem, Tie tie) {
        this.network = problem.network();
        this.site = network.site();
        this.tie = tie;
    }

    /** A terminal as the end of a conductor or link. */
    End terminalEnd(int terminal) {
        Attachment way = tie.chosenAttachment(terminal);
        String of = way.landing().of();
        if (way.landing() instanceof Landing.AtConnection at) {
            Optional<String> connection = at.connection().id();
            boolean electrode = site.electrodes().stream()
                    .anyMatch(candidate -> candidate.id().equals(of));
            return electrode ? new End.AtElectrode(of, connection) : new End.AtService(of, connection);
        }
        return new End.OnPath(of, network.isMetal(way.node()) ? Optional.empty() : findDistance(of, way.node()));
    }

    /** On metal that carries, landed on from a place. */
    End onMetal(int metal, int place) {
        String path = network.metalPath(metal);
        return new End.OnPath(path, findDistance(path, place));
    }

    /** A terminal, or metal landed on from a place. */
    End landedOn(int vertex, int place) {
        return Tie.isTerminal(vertex) ? terminalEnd(Tie.terminal(vertex)) : onMetal(vertex, place);
    }

    End onInstalled(String conductor, int place) {
        return new End.OnPath(conductor, findDistance(conductor, place));
    }

    /**
     * How far along a pipe or installed conductor a place lies; empty on frames and rings, which are landed on at their
     * columns, beams and connections.
     */
    Optional<Length> findDistance(String path, int place) {
        return site.paths().stream()
                .filter(candidate -> candidate.id().equals(path) && !(candidate instanceof RingPath))
                .flatMap(candidate -> candidate.findLine().stream())
                .flatMap(line -> findDistance(line, place).stream())
                .findFirst();
    }

    private Optional<Length> findDistance(Line line, int place) {
        Length floor = site.level(line.level()).floor();
        Length height = Length.ofNanometres(network.arrays().elevation(place)).minus(floor);
        return LineLengths.findDistance(line, network.arrays().at(place), height);
    }

    /** The run of a conductor: its places, without those that a straight run only passes. */
    List<Position> line(Stretch stretch) {
        List<Position> line = new ArrayList<>();
        int at = stretch.from();
        addPlace(at, line);
        int direction = Direction.NONE;
        for (TieEdge edge : stretch.edges()) {
            at = edge.other(at);
            boolean straightOn = edge.direction() == direction && line.size() > 1;
            if (straightOn && !isMetalOrTerminal(at)) {
                line.remove(line.size() - 1);
            }
            addPlace(at, line);
            direction = edge.copper().total().isZero() ? direction : edge.direction();
        }
        return line;
    }

    private void addPlace(int vertex, List<Position> line) {
        if (isMetalOrTerminal(vertex)) {
            return;
        }
        Position position = network.position(vertex);
        if (line.isEmpty() || !isSamePlace(line.get(line.size() - 1), position)) {
            line.add(position);
        }
    }

    private boolean isMetalOrTerminal(int vertex) {
        return Tie.isTerminal(vertex) || network.isMetal(vertex);
    }

    private boolean isSamePlace(Position a, Position b) {
        return a.at().equals(b.at()) && site.elevation(a).equals(site.elevation(b));
    }

    /** Whether a position of the site is that place. */
    boolean isAt(Position position, int place) {
        return isSamePlace(position, network.position(place));
    }
}
