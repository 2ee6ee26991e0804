package org.bondspan.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.MeasuredLines;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Qualification;
import org.bondspan.code.SitePlaces;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.WaterPiping;

/** The metal of a site, with what the code makes of it: judged once for any number of proposals. */
final class SiteMetal {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final MediaThatMayCarry media;
    private final SitePlaces places;
    private final MeasuredLines measuredLines;
    private final Map<String, Shape> shapes = new HashMap<>();
    private final Map<String, SitePath> paths = new HashMap<>();
    private final Map<String, Electrode> electrodes = new HashMap<>();
    private final Map<String, Carrier> carriers = new HashMap<>();
    private final Map<String, Map<String, Set<Position>>> meetings = new HashMap<>();
    private final Map<String, Optional<String>> pathsOfElectrodes = new HashMap<>();

    SiteMetal(Site site) {
        this.site = site;
        this.system = GroundingElectrodeSystem.of(site);
        this.media = MediaThatMayCarry.of(site);
        this.places = new SitePlaces(site);
        this.measuredLines = new MeasuredLines(site);
        site.paths().forEach(path -> {
            paths.put(path.id(), path);
            shapes.put(path.id(), Shape.of(path));
        });
        site.electrodes().forEach(electrode -> electrodes.put(electrode.id(), electrode));
        media.carriers().forEach(carrier -> {
            String id = carrier.path().id();
            carriers.put(id, carrier);
            shapes.put(id, shape(id).with(landingPlaces(carrier)));
        });
    }

    /** Where a carrier can be landed on besides its drawn metal. */
    private static List<Position> landingPlaces(Carrier carrier) {
        List<Connection> connections = List.of();
        if (carrier instanceof Carrier.Frame frame) {
            connections = frame.inGround();
        } else if (carrier instanceof Carrier.Ring ring) {
            connections = ring.electrode().connections();
        }
        return connections.stream().map(Connection::position).toList();
    }

    Site site() {
        return site;
    }

    GroundingElectrodeSystem system() {
        return system;
    }

    MediaThatMayCarry media() {
        return media;
    }

    /** Where its things are. */
    SitePlaces places() {
        return places;
    }

    MeasuredLines measuredLines() {
        return measuredLines;
    }

    /** A path with all places at which it can be landed on. */
    Shape shape(String path) {
        return Optional.ofNullable(shapes.get(path)).orElseThrow(() -> new IllegalArgumentException("no path " + path));
    }

    SitePath path(String id) {
        return Optional.ofNullable(paths.get(id)).orElseThrow(() -> new IllegalArgumentException("no path " + id));
    }

    Electrode electrode(String id) {
        return findElectrode(id).orElseThrow(() -> new IllegalArgumentException("no electrode " + id));
    }

    Optional<Electrode> findElectrode(String id) {
        return Optional.ofNullable(electrodes.get(id));
    }

    Optional<Carrier> findCarrier(String path) {
        return Optional.ofNullable(carriers.get(path));
    }

    /** Places at which an installed conductor meets the metal of a path. */
    Set<Position> meetings(String conductor, String path) {
        return meetings.computeIfAbsent(conductor, ignored -> new HashMap<>())
                .computeIfAbsent(path, id -> shape(conductor).meet(shape(id)));
    }

    /** The ring of that path, if it carries. */
    Optional<Carrier.Ring> findRing(String path) {
        return findCarrier(path).filter(Carrier.Ring.class::isInstance).map(Carrier.Ring.class::cast);
    }

    /**
     * The path that an electrode is part of: the pipe that it continues in, the ring's own path with leave, the frame
     * of an in-ground member.
     */
    Optional<String> findPathOf(Electrode electrode) {
        return pathsOfElectrodes.computeIfAbsent(electrode.id(), ignored -> findPath(electrode));
    }

    private Optional<String> findPath(Electrode electrode) {
        if (electrode instanceof WaterPipeElectrode) {
            return site.listPaths(WaterPiping.class).stream()
                    .filter(pipe -> pipe.metal() && pipe.electrode().equals(Optional.of(electrode.id())))
                    .map(WaterPiping::id)
                    .findFirst();
        }
        if (electrode instanceof GroundRing) {
            return media.carriers().stream()
                    .filter(carrier -> carrier instanceof Carrier.Ring ring
                            && ring.electrode().id().equals(electrode.id()))
                    .map(carrier -> carrier.path().id())
                    .findFirst();
        }
        if (electrode instanceof InGroundMetal metal && Qualification.of(metal).qualifies()) {
            return metal.frame().filter(carriers::containsKey);
        }
        return Optional.empty();
    }

    /** The frame to which a concrete-encased electrode is tied, if that ties and carries. */
    Optional<String> findTiedFrame(ConcreteEncased bars) {
        return bars.tiedToFrame()
                .filter(tie -> tie.means() != Electrode.TieMeans.WET_SET)
                .map(Electrode.FrameTie::frame)
                .filter(carriers::containsKey);
    }
}
