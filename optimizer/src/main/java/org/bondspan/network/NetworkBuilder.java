package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bondspan.code.Carrier;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Landing;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.site.Connection;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Riser;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.WireSize;

/**
 * Builds the network of a site: floors as exact grids, lines, vertical runs, and landings on metal. Only a
 * {@link Carrier} becomes a node of metal, and there is none of rebar, gas pipe or deck.
 */
final class NetworkBuilder {
    private final Site site;
    private final GroundingElectrodeSystem system;
    private final MediaThatMayCarry media;
    private final NetworkArrays arrays = new NetworkArrays();
    private final List<LevelPlan> plans;
    private final Map<String, Integer> levelIndex;
    private final Stacks stacks;
    private final Map<Position, Integer> connectionNodes = new LinkedHashMap<>();
    private final Map<Integer, InstalledAt> installedAt = new HashMap<>();

    private NetworkBuilder(Site site, GroundingElectrodeSystem system, MediaThatMayCarry media) {
        this.site = site;
        this.system = system;
        this.media = media;
        this.plans = site.levels().stream().map(LevelPlan::new).toList();
        this.levelIndex = IntStream.range(0, plans.size())
                .boxed()
                .collect(Collectors.toMap(i -> site.levels().get(i).id(), Function.identity()));
        this.stacks = new Stacks(arrays, plans);
    }

    static Network build(Site site, GroundingElectrodeSystem system, MediaThatMayCarry media) {
        return new NetworkBuilder(site, system, media).build();
    }

    private Network build() {
        List<MetalPiece> metal = listMetal();
        List<LinePiece> lines = listLines();
        gatherPlaces(metal, lines);
        IntStream.range(0, plans.size()).forEach(level -> plans.get(level).layFloor(level, arrays));
        for (Riser riser : site.risers()) {
            stacks.join(riser.levels().stream().map(this::index).toList(), riser.at());
        }
        listConnections().forEach(this::addConnection);
        Set<Integer> things = new HashSet<>(connectionNodes.values());
        TouchingLines touching = new TouchingLines(arrays);
        new LineRuns(arrays, plans, stacks, touching, things, installedAt).add(lines);
        new MetalStacks(plans, stacks).add(metal);
        stacks.all().forEach(stack -> stack.finish(arrays));
        touching.join(plans, stacks, things);
        touching.meet(metal);

        WallFaces faces = new WallFaces(arrays, site.levels());
        faces.split(installedAt);

        int places = arrays.nodeCount();
        Map<String, Integer> metalNodes = new LinkedHashMap<>();
        media.carriers().forEach(carrier -> metalNodes.put(carrier.path().id(), places + metalNodes.size()));
        Landings landings = new Landings(site, arrays, metalNodes, installedAt, faces);
        landings.addAll(stacks.all());
        touching.land(landings);
        media.carriers().forEach(carrier -> landAtConnections(carrier, landings));
        listLandings(Landing.AlongPath.class)
                .forEach(landing -> landing.alsoAt()
                        .forEach(connection ->
                                landings.add(connectionNode(connection), landing.of(), Optional.empty())));
        return new Network(
                site,
                arrays,
                places,
                metalNodes,
                connectionNodes,
                landings.places(),
                installedAt,
                listOblique(metal),
                faces);
    }

    private int index(String level) {
        Integer index = levelIndex.get(level);
        if (index == null) {
            throw new IllegalArgumentException("no level " + level);
        }
        return index;
    }

    /** Carriers, and what must be connected anywhere along it. */
    private List<MetalPiece> listMetal() {
        MetalPieces pieces = new MetalPieces(plans, this::index);
        List<MetalPiece> metal = new ArrayList<>();
        for (Carrier carrier : media.carriers()) {
            if (carrier instanceof Carrier.Frame frame) {
                metal.addAll(pieces.of(frame.path()));
            } else if (carrier instanceof Carrier.Pipe pipe) {
                metal.addAll(pieces.of(pipe.path(), pipe.usable()));
            }
        }
        Set<String> alongPaths = listLandings(Landing.AlongPath.class)
                .map(Landing.AlongPath::of)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        for (SitePath path : site.paths()) {
            if (path instanceof StructuralFrame frame && alongPaths.contains(frame.id())) {
                metal.addAll(pieces.of(frame));
            } else if (path instanceof WaterPiping pipe && alongPaths.contains(pipe.id())) {
                metal.addAll(pieces.of(pipe, LineLengths.of(pipe.line())));
            }
        }
        return metal;
    }

    private <T extends Landing> Stream<T> listLandings(Class<T> kind) {
        return system.obligations().stream()
                .flatMap(obligation -> obligation.landings().stream())
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private List<LinePiece> listLines() {
        List<LinePiece> lines = new ArrayList<>();
        for (SitePath path : site.paths()) {
            if (path instanceof CopperLine copper) {
                int level = index(copper.line().level());
                lines.addAll(LinePieces.of(copper, level, plans.get(level).floorElevation()));
            } else if (path instanceof InstalledConductor conductor) {
                int level = index(conductor.line().level());
                lines.addAll(LinePieces.of(conductor, level, plans.get(level).floorElevation()));
            }
        }
        return lines;
    }

    /** Connections of services, of what must be connected, and those that are landing places of a ring or frame. */
    private Set<Position> listConnections() {
        Set<Position> positions = new LinkedHashSet<>();
        site.services().stream()
                .map(Service::connections)
                .flatMap(List::stream)
                .map(Connection::position)
                .forEach(positions::add);
        listLandings(Landing.AtConnection.class)
                .map(landing -> landing.connection().position())
                .forEach(positions::add);
        media.carriers().stream()
                .flatMap(carrier -> landingConnections(carrier).stream())
                .map(Connection::position)
                .forEach(positions::add);
        listLandings(Landing.AlongPath.class)
                .flatMap(landing -> landing.alsoAt().stream())
                .map(Connection::position)
                .forEach(positions::add);
        return positions;
    }

    private static List<Connection> landingConnections(Carrier carrier) {
        if (carrier instanceof Carrier.Ring ring) {
            return ring.electrode().connections();
        }
        return carrier instanceof Carrier.Frame frame ? frame.inGround() : List.of();
    }

    private void gatherPlaces(List<MetalPiece> metal, List<LinePiece> lines) {
        listConnections().forEach(position -> plan(position.level()).addThing(position.at()));
        site.levels().forEach(level -> level.walls().forEach(wall -> wall.line().forEach(plan(level.id())::addThing)));
        for (Riser riser : site.risers()) {
            riser.levels().forEach(level -> plan(level).addThing(riser.at()));
        }
        for (MetalPiece piece : metal) {
            plans.get(piece.level()).addThing(piece.plan().from());
            plans.get(piece.level()).addThing(piece.plan().to());
        }
        for (LinePiece piece : lines) {
            LevelPlan plan = plans.get(piece.level());
            for (PlanPoint end : List.of(piece.plan().from(), piece.plan().to())) {
                if (!piece.measured() || piece.joinsFloorAt(end)) {
                    plan.addThing(end);
                } else {
                    plan.addCut(end);
                }
            }
        }
        new Crossings(metal, lines).forEach((level, place) -> plans.get(level).addCut(place));
    }

    private LevelPlan plan(String level) {
        return plans.get(index(level));
    }

    private void addConnection(Position position) {
        int level = index(position.level());
        long elevation = plans.get(level).floorElevation() + position.height().nanometres();
        connectionNodes.put(position, stacks.nodeAt(level, position.at(), elevation));
    }

    private void landAtConnections(Carrier carrier, Landings landings) {
        Optional<WireSize> limit = carrier instanceof Carrier.Ring ring
                ? Optional.of(ring.electrode().conductorSize())
                : Optional.empty();
        for (Connection connection : landingConnections(carrier)) {
            landings.add(connectionNode(connection), carrier.path().id(), limit);
        }
    }

    private int connectionNode(Connection connection) {
        Integer node = connectionNodes.get(connection.position());
        if (node == null) {
            throw new IllegalStateException("no node for connection " + connection);
        }
        return node;
    }

    private List<String> listOblique(List<MetalPiece> metal) {
        List<String> oblique = new ArrayList<>();
        for (int level = 0; level < plans.size(); level++) {
            int here = level;
            boolean metalOblique = metal.stream()
                    .anyMatch(piece -> piece.level() == here && piece.plan().isOblique());
            if (plans.get(level).grid().isPresent() && (plans.get(level).isOblique() || metalOblique)) {
                oblique.add(site.levels().get(level).id());
            }
        }
        return oblique;
    }
}
