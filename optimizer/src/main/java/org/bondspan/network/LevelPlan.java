package org.bondspan.network;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;

/** A level while the network is built: the places that matter on it, and its open floor's grid through them. */
final class LevelPlan {
    private final Level level;
    private final Set<PlanPoint> places = new LinkedHashSet<>();
    private final Set<PlanPoint> cuts = new LinkedHashSet<>();
    private Optional<FloorGrid> grid = Optional.empty();

    LevelPlan(Level level) {
        this.level = level;
        places.addAll(level.outline());
        level.closedAreas().forEach(area -> places.addAll(area.outline()));
    }

    /** A place where something lies: grid lines pass through it, copper lines are cut at it. */
    void addThing(PlanPoint at) {
        places.add(at);
        cuts.add(at);
    }

    /** A place at which copper lines are cut, without grid lines of its own. */
    void addCut(PlanPoint at) {
        cuts.add(at);
    }

    Set<PlanPoint> cuts() {
        return cuts;
    }

    /** Whether its outline or a closed area has an edge parallel to neither axis. */
    boolean isOblique() {
        return isOblique(level.outline()) || level.closedAreas().stream().anyMatch(area -> isOblique(area.outline()));
    }

    private static boolean isOblique(List<PlanPoint> outline) {
        return IntStream.range(0, outline.size())
                .mapToObj(i -> new PlanSegment(outline.get(i), outline.get((i + 1) % outline.size())))
                .anyMatch(PlanSegment::isOblique);
    }

    long floorElevation() {
        return level.floor().nanometres();
    }

    /** Elevation at which copper runs on the open floor. */
    long openElevation() {
        return floorElevation() + level.openHeight().orElseThrow().nanometres();
    }

    /** Lays the grid through all places, where the level is open. */
    void layFloor(int index, NetworkArrays network) {
        if (level.openHeight().isEmpty()) {
            return;
        }
        FloorGrid floor = new FloorGrid(level, coordinates(true), coordinates(false));
        floor.addTo(network, index, openElevation());
        grid = Optional.of(floor);
    }

    private long[] coordinates(boolean ofX) {
        TreeSet<Long> distinct = new TreeSet<>();
        places.forEach(place -> distinct.add(ofX ? place.x() : place.y()));
        return distinct.stream().mapToLong(Long::longValue).toArray();
    }

    /** The floor's node at a place; {@link FloorGrid#NONE} where there is none. */
    int floorNodeAt(PlanPoint at) {
        return grid.map(floor -> floor.nodeAt(at)).orElse(FloorGrid.NONE);
    }

    Optional<FloorGrid> grid() {
        return grid;
    }
}
