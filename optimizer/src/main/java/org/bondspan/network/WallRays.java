package org.bondspan.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Wall;

/** The walls of a level, and how they leave its places. */
final class WallRays {
    private record Piece(PlanSegment at, Optional<String> wall) {}

    private final List<Piece> walls = new ArrayList<>();
    private final List<Piece> edges = new ArrayList<>();

    WallRays(Level level) {
        for (Wall wall : level.walls()) {
            for (int i = 0; i + 1 < wall.line().size(); i++) {
                walls.add(new Piece(
                        new PlanSegment(wall.line().get(i), wall.line().get(i + 1)), Optional.of(wall.id())));
            }
        }
        addEdges(level.outline());
        level.closedAreas().forEach(area -> addEdges(area.outline()));
    }

    private void addEdges(List<PlanPoint> outline) {
        for (int i = 0; i < outline.size(); i++) {
            PlanSegment edge = new PlanSegment(outline.get(i), outline.get((i + 1) % outline.size()));
            edges.add(new Piece(edge, Optional.empty()));
        }
    }

    boolean isEmpty() {
        return walls.isEmpty();
    }

    /** Counter-clockwise; none where no wall is. Edges of the floor only where there is no wall along them. */
    List<WallRay> at(PlanPoint place) {
        List<WallRay> rays = rays(walls, place, new ArrayList<>());
        if (!rays.isEmpty()) {
            rays(edges, place, rays);
        }
        rays.sort(Comparator.comparingDouble(WallRay::angle));
        return rays;
    }

    private static List<WallRay> rays(List<Piece> pieces, PlanPoint place, List<WallRay> rays) {
        for (Piece piece : pieces) {
            if (piece.at().contains(place)) {
                for (PlanPoint end : List.of(piece.at().from(), piece.at().to())) {
                    if (!end.equals(place)) {
                        WallRay ray = WallRay.between(place, end, piece.wall());
                        if (rays.stream().noneMatch(ray::isAlong)) {
                            rays.add(ray);
                        }
                    }
                }
            }
        }
        return rays;
    }

    /** Walls that a run passes between its ends; where it begins or ends on a wall it does not pass it. */
    List<String> passed(PlanPoint from, PlanPoint to) {
        PlanSegment run = new PlanSegment(from, to);
        List<String> passed = new ArrayList<>();
        for (Piece piece : walls) {
            boolean touches = piece.at().contains(from) || piece.at().contains(to);
            if (!touches && run.findCrossing(piece.at()).isPresent()) {
                passed.add(piece.wall().orElseThrow());
            }
        }
        return passed;
    }
}
