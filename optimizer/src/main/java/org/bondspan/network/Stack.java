package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.bondspan.site.PlanPoint;

/**
 * What lies at one plan place, on one level or on those that a riser joins there, by elevation. Copper may run
 * vertically between any of it; what lies between is passed, or joined at its own height.
 */
final class Stack {
    private final int level;
    private final PlanPoint at;
    private final NavigableMap<Long, Integer> nodes = new TreeMap<>();
    private final List<Metal> metals = new ArrayList<>();

    Stack(int level, PlanPoint at) {
        this.level = level;
        this.at = at;
    }

    /**
     * Metal that can be landed on here between two elevations: a column, a rising pipe; a beam or level pipe where both
     * are equal.
     *
     * @param distanceAtBottom along the pipe; 0 on a frame
     * @param distanceAtTop likewise
     */
    record Metal(String path, long bottom, long top, long distanceAtBottom, long distanceAtTop) {
        boolean spans(long elevation) {
            return bottom <= elevation && elevation <= top;
        }
    }

    PlanPoint at() {
        return at;
    }

    /** The node at an elevation, made when there is none yet. */
    int nodeAt(int levelOfNode, long elevation, NetworkArrays network) {
        return nodes.computeIfAbsent(elevation, z -> network.addPlace(levelOfNode, at, z));
    }

    /** Takes in a node of a floor; two floors that a riser joins at one elevation meet there at once. */
    void addFloorNode(long elevation, int node, NetworkArrays network) {
        Integer there = nodes.putIfAbsent(elevation, node);
        if (there != null && there != node) {
            network.addVertical(there, node);
        }
    }

    void addMetal(Metal metal) {
        if (!metals.contains(metal)) {
            metals.add(metal);
        }
    }

    List<Metal> metals() {
        return metals;
    }

    /** Nodes, lowest first, complete once {@link #finish} has run. */
    List<Integer> nodes() {
        return List.copyOf(nodes.values());
    }

    /**
     * Adds a node at each end of metal beyond which something else lies, and the vertical runs between neighbours. A
     * place with one piece of metal and nothing to meet it gets neither.
     */
    void finish(NetworkArrays network) {
        long paths = metals.stream().map(Metal::path).distinct().count();
        if (nodes.isEmpty() && paths < 2) {
            return;
        }
        TreeSet<Long> ends = new TreeSet<>(nodes.keySet());
        for (Metal metal : metals) {
            ends.add(metal.bottom);
            ends.add(metal.top);
        }
        for (Metal metal : metals) {
            if (ends.last() > metal.top) {
                nodeAt(level, metal.top, network);
            }
            if (ends.first() < metal.bottom || !hasNodeWithin(metal)) {
                nodeAt(level, metal.bottom, network);
            }
        }
        int below = FloorGrid.NONE;
        for (int node : nodes.values()) {
            if (below != FloorGrid.NONE) {
                network.addVertical(below, node);
            }
            below = node;
        }
    }

    private boolean hasNodeWithin(Metal metal) {
        return !nodes.subMap(metal.bottom, true, metal.top, true).isEmpty();
    }
}
