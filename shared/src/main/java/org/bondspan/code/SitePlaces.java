package org.bondspan.code;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** Where the services, electrodes and paths of a site are. Immutable. */
public final class SitePlaces {
    private final Map<String, SitePath> paths = new HashMap<>();
    private final Map<String, List<Connection>> connections = new HashMap<>();
    private final Map<String, Position> entrances = new HashMap<>();

    public SitePlaces(Site site) {
        site.paths().forEach(path -> paths.put(path.id(), path));
        for (Service service : site.services()) {
            connections.put(service.id(), service.connections());
        }
        for (Electrode electrode : site.electrodes()) {
            connections.put(electrode.id(), electrode.connections());
        }
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            if (pipe.metal()) {
                pipe.electrode()
                        .ifPresent(electrode -> entrances.putIfAbsent(electrode, along(pipe.line(), Length.ZERO)));
            }
        }
    }

    /** Connections of a service or electrode that an end can mean: the named one, else all. */
    public List<Connection> connections(String of, Optional<String> named) {
        return connections.getOrDefault(of, List.of()).stream()
                .filter(connection -> named.isEmpty() || connection.id().equals(named))
                .toList();
    }

    /** Where a water-pipe electrode that a pipe is drawn for comes in: it is reached there, not at its connections. */
    public Optional<Position> findEntrance(String electrode) {
        return Optional.ofNullable(entrances.get(electrode));
    }

    /** How far along a line or pipe a place lies, if it lies on it. */
    public Optional<Length> findDistance(String path, Position place) {
        return findLine(path).flatMap(line -> LineLengths.findDistance(line, place));
    }

    /** The place so far along a line or pipe. */
    public Optional<Position> findPlace(String path, Length distance) {
        return findLine(path).map(line -> along(line, distance));
    }

    private Optional<Line> findLine(String path) {
        return Optional.ofNullable(paths.get(path)).flatMap(SitePath::findLine);
    }

    private static Position along(Line line, Length distance) {
        LineVertex place = LineLengths.placeAt(line, distance);
        return new Position(line.level(), place.at(), place.height());
    }
}
