package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Connection;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Level;
import org.bondspan.site.Line;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Service;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.usecase.Pen.Spot;

/**
 * A site of one level in whole feet as a graph of every whole foot: floor, lines and vertical runs foot by foot, frame,
 * pipe and ring as one node each. With whole coordinates some least tree lies on it (Hanan's argument).
 */
final class Raster {
    private static final int NOT_INSTALLED = -1;
    private static final int MOST = Book.SIZES.size() - 1;

    /**
     * An edge; free up to {@code installed}, never beyond {@code largest}; an installed conductor is no place for more.
     */
    record Edge(int a, int b, long feet, int installed, int largest) {
        long weight(int size) {
            if (size > largest) {
                return Long.MAX_VALUE;
            }
            return size <= installed ? 0 : Book.WEIGHTS[size] * feet;
        }
    }

    /** A way to land on a terminal. */
    record Landing(int node, long feet, int installed) {
        long weight(int size) {
            return size <= installed ? 0 : Book.WEIGHTS[size] * feet;
        }
    }

    private record Place(int x, int y) {}

    private record Key(Spot spot, String line) {}

    private final Site site;
    private final Level level;
    private final Book book;
    private final int makeUp;
    private final Map<Key, Integer> nodes = new LinkedHashMap<>();
    private final List<Edge> edges = new ArrayList<>();
    private final List<List<Landing>> terminals = new ArrayList<>();
    private final Map<Place, Set<Integer>> heights = new HashMap<>();
    private final Map<String, Integer> metals = new HashMap<>();
    private final Map<Spot, Integer> installedAt = new HashMap<>();
    private final Map<Place, Set<String>> linesAt = new HashMap<>();
    private final Set<Place> joined = new LinkedHashSet<>();
    private final Map<String, Set<Spot>> metalSpots = new LinkedHashMap<>();
    private int metalCount;

    Raster(Site site) {
        this.site = site;
        this.level = site.levels().get(0);
        this.book = new Book(site);
        this.makeUp = Book.feet(site.makeUpPerEnd().nanometres());
        gather();
        addFloor();
        addLines();
        addVerticalRuns();
        addMetal();
        addTerminals();
    }

    int nodeCount() {
        return nodes.size() + metalCount;
    }

    List<Edge> edges() {
        return edges;
    }

    List<List<Landing>> terminals() {
        return terminals;
    }

    Book book() {
        return book;
    }

    private static Spot spot(Position position) {
        return spot(position.at(), position.height().nanometres());
    }

    private static Spot spot(PlanPoint at, long height) {
        return new Spot(Book.feet(at.x()), Book.feet(at.y()), Book.feet(height));
    }

    /** Every whole foot of a line, in order. */
    static List<Spot> walk(Line line) {
        List<Spot> spots = new ArrayList<>();
        line.vertices().forEach(vertex -> {
            Spot next = spot(vertex.at(), vertex.height().nanometres());
            if (spots.isEmpty()) {
                spots.add(next);
            }
            Spot at = spots.get(spots.size() - 1);
            while (!at.equals(next)) {
                at = new Spot(step(at.x(), next.x()), step(at.y(), next.y()), step(at.z(), next.z()));
                spots.add(at);
            }
        });
        return spots;
    }

    private static int step(int from, int to) {
        return from + Integer.signum(to - from);
    }

    private Map<String, Line> lines() {
        Map<String, Line> lines = new LinkedHashMap<>();
        site.listPaths(CopperLine.class).forEach(line -> lines.put(line.id(), line.line()));
        site.listPaths(InstalledConductor.class).forEach(line -> lines.put(line.id(), line.line()));
        return lines;
    }

    private void gather() {
        site.services().stream().map(Service::connections).flatMap(List::stream).forEach(this::see);
        site.electrodes().forEach(electrode -> electrode.connections().forEach(this::see));
        for (StructuralFrame frame : site.listPaths(StructuralFrame.class)) {
            metalSpots.put(frame.id(), spots(frame));
        }
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            if (book.carries(pipe) || pipe.bondingRequired()) {
                metalSpots.put(pipe.id(), usable(pipe));
            }
        }
        metalSpots
                .values()
                .forEach(spots -> spots.forEach(spot -> {
                    see(spot);
                    joined.add(place(spot));
                }));
        lines().forEach((id, line) -> walk(line)
                .forEach(spot -> linesAt.computeIfAbsent(place(spot), at -> new LinkedHashSet<>())
                        .add(id)));
        lines().forEach((id, line) -> line.vertices().forEach(vertex -> {
            Place at = place(spot(vertex.at(), 0));
            if (linesAt.getOrDefault(at, Set.of()).size() > 1) {
                joined.add(at);
            }
        }));
    }

    private void see(Connection connection) {
        see(spot(connection.position()));
        joined.add(place(spot(connection.position())));
    }

    private void see(Spot spot) {
        heights.computeIfAbsent(place(spot), at -> new LinkedHashSet<>()).add(spot.z());
    }

    private static Place place(Spot spot) {
        return new Place(spot.x(), spot.y());
    }

    private Set<Spot> spots(StructuralFrame frame) {
        Set<Spot> spots = new LinkedHashSet<>();
        for (PlanPoint column : frame.columns()) {
            for (int z = Book.feet(frame.bottom().nanometres());
                    z <= Book.feet(frame.top().nanometres());
                    z++) {
                spots.add(new Spot(Book.feet(column.x()), Book.feet(column.y()), z));
            }
        }
        frame.beams().forEach(beam -> {
            Spot at = spot(beam.from(), frame.beamHeight().nanometres());
            Spot end = spot(beam.to(), frame.beamHeight().nanometres());
            spots.add(at);
            while (!at.equals(end)) {
                at = new Spot(step(at.x(), end.x()), step(at.y(), end.y()), at.z());
                spots.add(at);
            }
        });
        return spots;
    }

    private Set<Spot> usable(WaterPiping pipe) {
        List<Spot> walk = walk(pipe.line());
        boolean everywhere = !book.carries(pipe) || (site.qualifiedPersonsOnly() && pipe.exposed());
        return new LinkedHashSet<>(everywhere ? walk : walk.subList(0, Math.min(walk.size(), 6)));
    }

    private int node(Spot spot) {
        return nodes.computeIfAbsent(new Key(spot, ""), key -> nodes.size());
    }

    private int lineNode(Spot spot, String line) {
        boolean shared = joined.contains(place(spot)) || isOpen(level, 2 * spot.x(), 2 * spot.y());
        if (shared) {
            see(spot);
            return node(spot);
        }
        return nodes.computeIfAbsent(new Key(spot, line), key -> nodes.size());
    }

    /** Whether a place given in half feet lies in the closed outline and inside no closed area. */
    private static boolean isOpen(Level level, int x2, int y2) {
        return isInside(level.outline(), x2, y2, true)
                && level.closedAreas().stream()
                        .map(ClosedArea::outline)
                        .noneMatch(area -> isInside(area, x2, y2, false));
    }

    private static boolean isInside(List<PlanPoint> polygon, int x2, int y2, boolean edge) {
        boolean inside = false;
        for (int i = 0; i < polygon.size(); i++) {
            PlanPoint p = polygon.get(i);
            PlanPoint q = polygon.get((i + 1) % polygon.size());
            int px = 2 * Book.feet(p.x());
            int py = 2 * Book.feet(p.y());
            int qx = 2 * Book.feet(q.x());
            int qy = 2 * Book.feet(q.y());
            boolean onEdge = Math.min(px, qx) <= x2
                    && x2 <= Math.max(px, qx)
                    && Math.min(py, qy) <= y2
                    && y2 <= Math.max(py, qy);
            if (onEdge) {
                return edge;
            }
            if (px == qx && px > x2 && Math.min(py, qy) <= y2 && y2 < Math.max(py, qy)) {
                inside = !inside;
            }
        }
        return inside;
    }

    private void addFloor() {
        int mostX =
                level.outline().stream().mapToInt(at -> Book.feet(at.x())).max().orElseThrow();
        int mostY =
                level.outline().stream().mapToInt(at -> Book.feet(at.y())).max().orElseThrow();
        for (int x = 0; x <= mostX; x++) {
            for (int y = 0; y <= mostY; y++) {
                addFloorRun(new Spot(x, y, 0), new Spot(x + 1, y, 0));
                addFloorRun(new Spot(x, y, 0), new Spot(x, y + 1, 0));
            }
        }
    }

    /** Whether the floor is open on a foot between two neighbouring places. */
    static boolean isOpenRun(Level level, Spot a, Spot b) {
        return isOpen(level, 2 * a.x(), 2 * a.y())
                && isOpen(level, 2 * b.x(), 2 * b.y())
                && isOpen(level, a.x() + b.x(), a.y() + b.y());
    }

    private void addFloorRun(Spot a, Spot b) {
        if (isOpenRun(level, a, b)) {
            see(a);
            see(b);
            edges.add(new Edge(node(a), node(b), 1, NOT_INSTALLED, MOST));
        }
    }

    private void addLines() {
        lines().forEach((id, line) -> {
            int size = site.listPaths(InstalledConductor.class).stream()
                    .filter(conductor -> conductor.id().equals(id))
                    .mapToInt(conductor -> Book.SIZES.indexOf(conductor.size().label()))
                    .findFirst()
                    .orElse(NOT_INSTALLED);
            List<Spot> walk = walk(line);
            for (int i = 0; i < walk.size(); i++) {
                if (size != NOT_INSTALLED) {
                    installedAt.merge(walk.get(i), size, Math::max);
                }
                if (i > 0) {
                    int a = lineNode(walk.get(i - 1), id);
                    int b = lineNode(walk.get(i), id);
                    edges.add(new Edge(a, b, 1, size, size == NOT_INSTALLED ? MOST : size));
                }
            }
        });
    }

    private void addVerticalRuns() {
        metalSpots.forEach((id, spots) ->
                spots.stream().filter(spot -> isMetWithOther(id, spot)).forEach(this::node));
        heights.forEach((place, at) -> {
            int low = at.stream().mapToInt(z -> z).min().orElseThrow();
            int high = at.stream().mapToInt(z -> z).max().orElseThrow();
            for (int z = low; z < high; z++) {
                int a = node(new Spot(place.x(), place.y(), z));
                int b = node(new Spot(place.x(), place.y(), z + 1));
                edges.add(new Edge(a, b, 1, NOT_INSTALLED, MOST));
            }
        });
    }

    /** Whether other metal lies at the place of that spot: copper without length may join them. */
    private boolean isMetWithOther(String id, Spot spot) {
        return metalSpots.entrySet().stream()
                .filter(other -> !other.getKey().equals(id))
                .anyMatch(other -> other.getValue().contains(spot));
    }

    private void addMetal() {
        int floor = nodes.size();
        for (StructuralFrame frame : site.listPaths(StructuralFrame.class)) {
            if (frame.mayCarry()) {
                int metal = addMetalNode(frame.id());
                metalSpots.getOrDefault(frame.id(), Set.of()).forEach(spot -> land(spot, metal, MOST));
                inGround(frame).forEach(spot -> land(spot, metal, MOST));
            }
        }
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            if (book.carries(pipe)) {
                int metal = addMetalNode(pipe.id());
                metalSpots.getOrDefault(pipe.id(), Set.of()).forEach(spot -> land(spot, metal, MOST));
            }
        }
        for (RingPath path : site.listPaths(RingPath.class)) {
            if (path.mayInterconnect()) {
                int metal = addMetalNode(path.id());
                GroundRing ring = site.listElectrodes(GroundRing.class).get(0);
                int own = Book.SIZES.indexOf(ring.conductorSize().label());
                ring.connections().forEach(connection -> land(spot(connection.position()), metal, own));
            }
        }
        if (floor != nodes.size()) {
            throw new IllegalStateException("metal lands on no place of its own");
        }
    }

    private List<Spot> inGround(StructuralFrame frame) {
        return site.listElectrodes(InGroundMetal.class).stream()
                .filter(metal -> metal.frame().stream().anyMatch(frame.id()::equals))
                .flatMap(metal -> metal.connections().stream())
                .map(connection -> spot(connection.position()))
                .toList();
    }

    private int addMetalNode(String id) {
        int metal = nodes.size() + metalCount++;
        metals.put(id, metal);
        return metal;
    }

    private void land(Spot spot, int metal, int largest) {
        Integer node = nodes.get(new Key(spot, ""));
        if (node != null) {
            edges.add(new Edge(node, metal, makeUp, installedAt.getOrDefault(spot, NOT_INSTALLED), largest));
        }
    }

    private void addTerminals() {
        for (Service service : site.services()) {
            terminals.add(landings(
                    service.connections().stream().map(Connection::position).toList()));
        }
        for (Book.Duty duty : book.duties()) {
            List<Landing> ways = landings(duty.at());
            duty.with().forEach(path -> ways.add(new Landing(metal(path), 0, NOT_INSTALLED)));
            duty.along()
                    .ifPresent(path -> metalSpots.getOrDefault(path, Set.of()).forEach(spot -> addWay(ways, spot)));
            for (StructuralFrame frame : site.listPaths(StructuralFrame.class)) {
                if (duty.along().stream().anyMatch(frame.id()::equals)) {
                    inGround(frame).forEach(spot -> addWay(ways, spot));
                }
            }
            terminals.add(ways);
        }
    }

    private int metal(String path) {
        Integer metal = metals.get(path);
        if (metal == null) {
            throw new IllegalStateException("no metal " + path);
        }
        return metal;
    }

    private List<Landing> landings(List<Position> positions) {
        List<Landing> ways = new ArrayList<>();
        positions.forEach(position -> addWay(ways, spot(position)));
        return ways;
    }

    private void addWay(List<Landing> ways, Spot spot) {
        Integer node = nodes.get(new Key(spot, ""));
        if (node != null) {
            ways.add(new Landing(node, makeUp, installedAt.getOrDefault(spot, NOT_INSTALLED)));
        }
    }
}
