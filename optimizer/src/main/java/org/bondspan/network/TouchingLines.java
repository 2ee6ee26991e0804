package org.bondspan.network;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.site.PlanPoint;

/**
 * Lines that an open floor does not join where they pass: between the ends of a measured line, along an oblique one.
 * Each has a node of its own there, joined to connections and other lines at the place and landed on metal, but not
 * joined to the floor.
 */
final class TouchingLines {
    private final NetworkArrays arrays;
    private final Map<Touch, Integer> nodes = new LinkedHashMap<>();
    private final Map<Place, List<Integer>> byPlace = new LinkedHashMap<>();
    private final Set<Integer> vertices = new HashSet<>();
    private final List<OnMetal> onMetal = new ArrayList<>();

    private record Touch(String path, Place place, long elevation) {}

    private record Place(int level, PlanPoint at) {}

    private record OnMetal(int node, String path) {}

    TouchingLines(NetworkArrays arrays) {
        this.arrays = arrays;
    }

    /** The node of a line at a place that it touches. */
    int nodeAt(LinePiece piece, LinePiece.Cut cut) {
        Place place = new Place(piece.level(), cut.at());
        int node = nodes.computeIfAbsent(new Touch(piece.path(), place, cut.elevation()), touch -> {
            int made = arrays.addPlace(place.level(), place.at(), touch.elevation());
            byPlace.computeIfAbsent(place, ignored -> new ArrayList<>()).add(made);
            return made;
        });
        if (piece.hasVertexAt(cut.at())) {
            vertices.add(node);
        }
        return node;
    }

    /**
     * Joins each with all that lies at its place but the bare floor, and with touching lines where either has a vertex.
     *
     * @param things nodes at which something other than a floor lies
     */
    void join(List<LevelPlan> plans, Stacks stacks, Set<Integer> things) {
        byPlace.forEach((place, here) -> {
            int floor = plans.get(place.level()).floorNodeAt(place.at());
            for (int i = 0; i < here.size(); i++) {
                int node = here.get(i);
                for (int other : stacks.at(place.level(), place.at()).nodes()) {
                    if (other != floor || things.contains(floor)) {
                        arrays.addVertical(node, other);
                    }
                }
                for (int other : here.subList(i + 1, here.size())) {
                    if (vertices.contains(node) || vertices.contains(other)) {
                        arrays.addVertical(node, other);
                    }
                }
            }
        });
    }

    /** Finds the metal that each meets, with a vertical run to it where it lies higher or lower. */
    void meet(List<MetalPiece> metal) {
        Nearby<MetalPiece> nearby = Nearby.of(metal, MetalPiece::plan);
        nodes.forEach((touch, node) -> {
            PlanPoint at = touch.place().at();
            Set<Stack.Metal> met = new HashSet<>();
            for (MetalPiece piece : nearby.near(new PlanSegment(at, at))) {
                if (piece.level() == touch.place().level() && piece.takesCopperAt(at) && met.add(piece.at(at))) {
                    meet(node, touch, piece.at(at));
                }
            }
        });
    }

    private void meet(int node, Touch touch, Stack.Metal metal) {
        if (metal.spans(touch.elevation())) {
            onMetal.add(new OnMetal(node, metal.path()));
            return;
        }
        long end = touch.elevation() < metal.bottom() ? metal.bottom() : metal.top();
        int atMetal = arrays.addPlace(touch.place().level(), touch.place().at(), end);
        arrays.addVertical(node, atMetal);
        onMetal.add(new OnMetal(atMetal, metal.path()));
    }

    void land(Landings landings) {
        onMetal.forEach(landing -> landings.add(landing.node(), landing.path(), Optional.empty()));
    }
}
