package org.bondspan.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.units.Length;

/** Where the things of a site are. */
final class Whereabouts {
    private final Site site;
    private final Map<String, SitePath> paths = new HashMap<>();
    private final Map<String, Shape> shapes = new HashMap<>();
    private final Map<String, List<Connection>> connections = new HashMap<>();

    Whereabouts(Site site) {
        this.site = site;
        site.paths().forEach(path -> {
            paths.put(path.id(), path);
            shapes.put(path.id(), Shape.of(path));
        });
        for (Service service : site.services()) {
            connections.put(service.id(), service.connections());
        }
        for (Electrode electrode : site.electrodes()) {
            connections.put(electrode.id(), electrode.connections());
        }
    }

    /** More places at which a path can be landed on. */
    void addPlaces(String path, List<Position> places) {
        shapes.put(path, shape(path).with(places));
    }

    Shape shape(String path) {
        return Optional.ofNullable(shapes.get(path)).orElseThrow(() -> new IllegalArgumentException("no path " + path));
    }

    /** Connections of a service or electrode that an end can mean: the named one, else all. */
    List<Connection> connections(String of, Optional<String> named) {
        return connections.getOrDefault(of, List.of()).stream()
                .filter(connection -> named.isEmpty() || connection.id().equals(named))
                .toList();
    }

    boolean isAt(String path, Position place) {
        return shape(path).isAt(place);
    }

    /** How far along a line or pipe a place lies, if it lies on it. */
    Optional<Length> findDistance(String path, Position place) {
        return findLine(path)
                .filter(line -> line.level().equals(place.level()))
                .flatMap(line -> LineLengths.findDistance(line, place.at(), place.height()));
    }

    /** The place so far along a line or pipe. */
    Optional<Position> findPlace(String path, Length distance) {
        return findLine(path).map(line -> {
            LineVertex place = LineLengths.placeAt(line, distance);
            return new Position(line.level(), place.at(), place.height());
        });
    }

    private Optional<Line> findLine(String path) {
        return Optional.ofNullable(paths.get(path)).flatMap(SitePath::findLine);
    }

    Length elevation(Position place) {
        return site.level(place.level()).floor().plus(place.height());
    }

    /** Straight, heights included. */
    Length distance(Position a, Position b) {
        return Length.ofRun(
                b.at().x() - a.at().x(),
                b.at().y() - a.at().y(),
                elevation(b).minus(elevation(a)).nanometres());
    }
}
