package org.bondspan.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.site.PlanPoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Random simple polygons with whole coordinates from 0 to {@link #SPAN}: small, so that edges often meet by chance. */
final class RandomPolygons {
    static final int SPAN = 12;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private RandomPolygons() {}

    /** With edges parallel to the axes: squares grown together, without a hole. */
    static List<PlanPoint> orthogonal(Random random) {
        return Stream.generate(() -> tryOrthogonal(random))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<List<PlanPoint>> tryOrthogonal(Random random) {
        Set<PlanPoint> cells = new LinkedHashSet<>();
        cells.add(new PlanPoint(random.nextInt(SPAN), random.nextInt(SPAN)));
        for (int i = random.nextInt(60); i > 0; i--) {
            PlanPoint cell = List.copyOf(cells).get(random.nextInt(cells.size()));
            int step = random.nextBoolean() ? 1 : -1;
            boolean east = random.nextBoolean();
            PlanPoint next = new PlanPoint(cell.x() + (east ? step : 0), cell.y() + (east ? 0 : step));
            if (0 <= next.x() && next.x() < SPAN && 0 <= next.y() && next.y() < SPAN) {
                cells.add(next);
            }
        }
        List<Geometry> squares = cells.stream()
                .map(cell -> FACTORY.toGeometry(new Envelope(cell.x(), cell.x() + 1, cell.y(), cell.y() + 1)))
                .toList();
        Polygon union = (Polygon) UnaryUnionOp.union(squares);
        return union.getNumInteriorRing() > 0
                ? Optional.empty()
                : Optional.of(vertices(union.getExteriorRing().getCoordinates()));
    }

    /** With edges in any direction: places in order round a centre, where that is a simple polygon. */
    static List<PlanPoint> oblique(Random random) {
        return Stream.generate(() -> tryOblique(random))
                .flatMap(Optional::stream)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<List<PlanPoint>> tryOblique(Random random) {
        double centreX = random.nextInt(SPAN) + 0.37;
        double centreY = random.nextInt(SPAN) + 0.61;
        Set<PlanPoint> places = new LinkedHashSet<>();
        for (int i = 3 + random.nextInt(8); i > 0; i--) {
            places.add(new PlanPoint(random.nextInt(SPAN + 1), random.nextInt(SPAN + 1)));
        }
        List<PlanPoint> sorted = places.stream()
                .sorted(Comparator.comparingDouble(place -> Math.atan2(place.y() - centreY, place.x() - centreX)))
                .toList();
        if (sorted.size() < 3) {
            return Optional.empty();
        }
        Polygon polygon = FACTORY.createPolygon(ring(sorted));
        return polygon.isValid() && polygon.getArea() > 0 ? Optional.of(sorted) : Optional.empty();
    }

    static Coordinate[] ring(List<PlanPoint> outline) {
        List<Coordinate> ring = new ArrayList<>();
        outline.forEach(place -> ring.add(new Coordinate(place.x(), place.y())));
        ring.add(ring.get(0).copy());
        return ring.toArray(Coordinate[]::new);
    }

    private static List<PlanPoint> vertices(Coordinate[] ring) {
        return Stream.of(ring)
                .limit(ring.length - 1)
                .map(place -> new PlanPoint(Math.round(place.x), Math.round(place.y)))
                .toList();
    }
}
