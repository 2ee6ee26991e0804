package org.bondspan.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.WireSize;
import org.jspecify.annotations.Nullable;

/**
 * The nodes and edges of a network while it is built: plain arrays, since a large footprint has a million of them.
 * Nodes are places where copper may be; every carrier is one node of metal, since within it nothing costs copper.
 */
final class NetworkArrays {
    private int[] level = new int[1024];
    private long[] x = new long[1024];
    private long[] y = new long[1024];
    private long[] elevation = new long[1024];
    private int nodeCount;

    private int[] from = new int[2048];
    private int[] to = new int[2048];
    private long[] length = new long[2048];
    private EdgeKind[] kind = new EdgeKind[2048];
    private int[] direction = new int[2048];
    /** Index in {@link #paths} of the line followed or the metal landed on. */
    private int[] path = new int[2048];
    /** Sizes up to this one need no new copper. */
    private @Nullable WireSize[] freeUpTo = new @Nullable WireSize[2048];
    /** Sizes above this one may not pass. */
    private @Nullable WireSize[] largest = new @Nullable WireSize[2048];

    private int edgeCount;
    private final List<String> paths = new ArrayList<>(List.of(""));

    int nodeCount() {
        return nodeCount;
    }

    int edgeCount() {
        return edgeCount;
    }

    int addPlace(int levelIndex, PlanPoint at, long elevationOfPlace) {
        if (nodeCount == level.length) {
            level = Arrays.copyOf(level, 2 * nodeCount);
            x = Arrays.copyOf(x, 2 * nodeCount);
            y = Arrays.copyOf(y, 2 * nodeCount);
            elevation = Arrays.copyOf(elevation, 2 * nodeCount);
        }
        level[nodeCount] = levelIndex;
        x[nodeCount] = at.x();
        y[nodeCount] = at.y();
        elevation[nodeCount] = elevationOfPlace;
        return nodeCount++;
    }

    void addFloorRun(int a, int b, long runLength, int runDirection) {
        add(a, b, runLength, EdgeKind.FLOOR, runDirection, "", null, null);
    }

    void addVertical(int a, int b) {
        long rise = Math.abs(elevation[a] - elevation[b]);
        add(a, b, rise, EdgeKind.VERTICAL, Direction.VERTICAL, "", null, null);
    }

    void addLineRun(int a, int b, long runLength, int runDirection, String line) {
        add(a, b, runLength, EdgeKind.LINE, runDirection, line, null, null);
    }

    void addInstalledRun(int a, int b, int runDirection, String conductor, WireSize size) {
        add(a, b, 0, EdgeKind.INSTALLED, runDirection, conductor, size, size);
    }

    /**
     * Lands copper on metal.
     *
     * @param landed the installed conductor that already lies there, up to whose size nothing is added
     * @param limit the largest size that the metal carries
     */
    void addLanding(
            int place, int metal, long makeUp, String onto, Optional<WireSize> landed, Optional<WireSize> limit) {
        add(place, metal, makeUp, EdgeKind.LANDING, Direction.NONE, onto, landed.orElse(null), limit.orElse(null));
    }

    /** From one face of a wall to another. */
    void addCrossing(int a, int b, String wall) {
        add(a, b, 0, EdgeKind.CROSSING, Direction.NONE, wall, null, null);
    }

    /** The same run once more; returns its number. */
    int addCopyOf(int edge) {
        add(from[edge], to[edge], length[edge], kind[edge], direction[edge], path(edge), freeUpTo[edge], largest[edge]);
        return edgeCount - 1;
    }

    /** Gives a run other ends. */
    void lead(int edge, int a, int b) {
        from[edge] = a;
        to[edge] = b;
    }

    private void add(
            int a,
            int b,
            long edgeLength,
            EdgeKind edgeKind,
            int runDirection,
            String onPath,
            @Nullable WireSize free,
            @Nullable WireSize most) {
        if (edgeCount == from.length) {
            grow();
        }
        from[edgeCount] = a;
        to[edgeCount] = b;
        length[edgeCount] = edgeLength;
        kind[edgeCount] = edgeKind;
        direction[edgeCount] = runDirection;
        path[edgeCount] = pathIndex(onPath);
        freeUpTo[edgeCount] = free;
        largest[edgeCount] = most;
        edgeCount++;
    }

    private void grow() {
        int size = 2 * edgeCount;
        from = Arrays.copyOf(from, size);
        to = Arrays.copyOf(to, size);
        length = Arrays.copyOf(length, size);
        kind = Arrays.copyOf(kind, size);
        direction = Arrays.copyOf(direction, size);
        path = Arrays.copyOf(path, size);
        freeUpTo = Arrays.copyOf(freeUpTo, size);
        largest = Arrays.copyOf(largest, size);
    }

    /** Paths come one after the other, so the last one is the one looked for nearly always. */
    private int pathIndex(String id) {
        int last = paths.size() - 1;
        if (paths.get(last).equals(id)) {
            return last;
        }
        int known = paths.indexOf(id);
        if (known < 0) {
            paths.add(id);
            return last + 1;
        }
        return known;
    }

    int from(int edge) {
        return from[edge];
    }

    int to(int edge) {
        return to[edge];
    }

    long length(int edge) {
        return length[edge];
    }

    EdgeKind kind(int edge) {
        return kind[edge];
    }

    int direction(int edge) {
        return direction[edge];
    }

    /** The id of the path that the edge follows or lands on; empty on a floor and up and down. */
    String path(int edge) {
        return paths.get(path[edge]);
    }

    Optional<WireSize> freeUpTo(int edge) {
        return Optional.ofNullable(freeUpTo[edge]);
    }

    Optional<WireSize> largest(int edge) {
        return Optional.ofNullable(largest[edge]);
    }

    int level(int node) {
        return level[node];
    }

    PlanPoint at(int node) {
        return new PlanPoint(x[node], y[node]);
    }

    long x(int node) {
        return x[node];
    }

    long y(int node) {
        return y[node];
    }

    long elevation(int node) {
        return elevation[node];
    }
}
