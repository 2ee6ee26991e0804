package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.LineLengths;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.Line;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Where in plan copper may run on each level: inside the outline, outside the closed areas, and along drawn lines
 * wherever they lead; places within 0.05 ft are one.
 */
final class CopperPlan {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final double SAME = (double) LineLengths.SAME_PLACE.nanometres();

    private final Site site;
    private final Map<String, Floor> floors = new HashMap<>();

    /** One level: what a run is free of, and what it may not touch otherwise. */
    private record Floor(String level, Geometry outline, Map<String, Geometry> closed, Geometry drawn) {
        Optional<String> findFault(Geometry run) {
            Geometry elsewhere = drawn.isEmpty() ? run : run.difference(drawn);
            if (elsewhere.isEmpty()) {
                return Optional.empty();
            }
            for (Map.Entry<String, Geometry> area : closed.entrySet()) {
                if (elsewhere.intersects(area.getValue())) {
                    return Optional.of("passes closed area " + area.getKey() + " on level " + level);
                }
            }
            return outline.covers(elsewhere) ? Optional.empty() : Optional.of("leaves the outline of level " + level);
        }
    }

    CopperPlan(Site site) {
        this.site = site;
    }

    /** What is wrong with a straight run on a level, in words; empty where copper may run so. */
    Optional<String> findFault(String level, PlanPoint a, PlanPoint b) {
        return a.equals(b)
                ? Optional.empty()
                : floors.computeIfAbsent(level, this::floor).findFault(segment(a, b));
    }

    private Floor floor(String id) {
        Level level = site.level(id);
        Map<String, Geometry> closed = new HashMap<>();
        for (ClosedArea area : level.closedAreas()) {
            Geometry inside = polygon(area.outline()).buffer(-SAME);
            if (!inside.isEmpty()) {
                closed.put(area.id(), inside);
            }
        }
        return new Floor(id, polygon(level.outline()).buffer(SAME), Map.copyOf(closed), drawn(id));
    }

    /** All that lies along lines drawn for copper and installed conductors. */
    private Geometry drawn(String level) {
        List<Geometry> lines = Stream.concat(
                        site.listPaths(CopperLine.class).stream().map(CopperLine::line),
                        site.listPaths(InstalledConductor.class).stream().map(InstalledConductor::line))
                .filter(line -> line.level().equals(level))
                .map(CopperPlan::band)
                .toList();
        return GEOMETRY.buildGeometry(lines).union();
    }

    private static Geometry band(Line line) {
        return GEOMETRY.createLineString(line.vertices().stream()
                        .map(vertex -> coordinate(vertex.at()))
                        .toArray(Coordinate[]::new))
                .buffer(SAME);
    }

    private static Geometry segment(PlanPoint a, PlanPoint b) {
        return GEOMETRY.createLineString(new Coordinate[] {coordinate(a), coordinate(b)});
    }

    private static Geometry polygon(List<PlanPoint> outline) {
        List<Coordinate> ring =
                new ArrayList<>(outline.stream().map(CopperPlan::coordinate).toList());
        ring.add(ring.get(0));
        return GEOMETRY.createPolygon(ring.toArray(Coordinate[]::new));
    }

    private static Coordinate coordinate(PlanPoint at) {
        return new Coordinate((double) at.x(), (double) at.y());
    }
}
