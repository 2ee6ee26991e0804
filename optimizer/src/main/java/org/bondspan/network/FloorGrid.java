package org.bondspan.network;

import java.util.Arrays;
import java.util.List;
import org.bondspan.network.PolygonBand.Interval;
import org.bondspan.site.ClosedArea;
import org.bondspan.site.Level;
import org.bondspan.site.PlanPoint;

/**
 * The open floor of a level as the exact grid of all lines that can matter: parallels to x and y through every place of
 * interest (Hanan, SIAM J. Appl. Math. 14, 1966; with obstacles Ganley and Cohoon, 1994). A run between neighbouring
 * crossings is permitted where it lies in the closed outline and touches no closed area's inside.
 */
final class FloorGrid {
    static final int NONE = -1;

    private final long[] xs;
    private final long[] ys;
    /** Node of a crossing, by {@link #index}; {@link #NONE} where no permitted run meets. */
    private final int[] nodes;

    private final boolean[] eastward;
    private final boolean[] northward;

    /**
     * @param xs every x of interest, ascending and distinct
     * @param ys every y of interest, likewise
     */
    FloorGrid(Level level, long[] xs, long[] ys) {
        this.xs = xs.clone();
        this.ys = ys.clone();
        this.nodes = new int[Math.multiplyExact(xs.length, ys.length)];
        this.eastward = new boolean[nodes.length];
        this.northward = new boolean[nodes.length];
        Arrays.fill(nodes, NONE);
        permit(level.outline());
        for (ClosedArea area : level.closedAreas()) {
            close(area.outline());
        }
    }

    private void permit(List<PlanPoint> outline) {
        PolygonBand rows = rows(outline);
        for (int j = 0; j < ys.length; j++) {
            for (Interval interval : rows.closed(ys[j])) {
                markEast(j, interval, true);
            }
        }
        PolygonBand columns = columns(outline);
        for (int i = 0; i < xs.length; i++) {
            for (Interval interval : columns.closed(xs[i])) {
                markNorth(i, interval, true);
            }
        }
    }

    private void close(List<PlanPoint> outline) {
        PolygonBand rows = rows(outline);
        int last = firstAtLeast(ys, rows.highest());
        for (int j = firstAtLeast(ys, rows.lowest()); j < Math.min(last + 1, ys.length); j++) {
            for (Interval interval : rows.inside(ys[j])) {
                markEast(j, interval, false);
            }
        }
        PolygonBand columns = columns(outline);
        last = firstAtLeast(xs, columns.highest());
        for (int i = firstAtLeast(xs, columns.lowest()); i < Math.min(last + 1, xs.length); i++) {
            for (Interval interval : columns.inside(xs[i])) {
                markNorth(i, interval, false);
            }
        }
    }

    /** Permits the runs within a closed interval, or closes those that an open one touches. */
    private void markEast(int row, Interval interval, boolean permitted) {
        int from = permitted ? firstAtLeast(xs, interval.from()) : lastAtMost(xs, interval.from());
        for (int i = Math.max(from, 0); i + 1 < xs.length; i++) {
            if (permitted ? xs[i + 1] > interval.to() : xs[i] >= interval.to()) {
                return;
            }
            eastward[index(i, row)] = permitted;
        }
    }

    private void markNorth(int column, Interval interval, boolean permitted) {
        int from = permitted ? firstAtLeast(ys, interval.from()) : lastAtMost(ys, interval.from());
        for (int j = Math.max(from, 0); j + 1 < ys.length; j++) {
            if (permitted ? ys[j + 1] > interval.to() : ys[j] >= interval.to()) {
                return;
            }
            northward[index(column, j)] = permitted;
        }
    }

    private static PolygonBand rows(List<PlanPoint> outline) {
        return new PolygonBand(xsOf(outline), ysOf(outline));
    }

    private static PolygonBand columns(List<PlanPoint> outline) {
        return new PolygonBand(ysOf(outline), xsOf(outline));
    }

    private static long[] xsOf(List<PlanPoint> outline) {
        return outline.stream().mapToLong(PlanPoint::x).toArray();
    }

    private static long[] ysOf(List<PlanPoint> outline) {
        return outline.stream().mapToLong(PlanPoint::y).toArray();
    }

    /** Creates the nodes and runs of the floor at an elevation. */
    void addTo(NetworkArrays network, int level, long elevation) {
        for (int j = 0; j < ys.length; j++) {
            for (int i = 0; i < xs.length; i++) {
                if (meetsRun(i, j)) {
                    nodes[index(i, j)] = network.addPlace(level, new PlanPoint(xs[i], ys[j]), elevation);
                }
            }
        }
        for (int j = 0; j < ys.length; j++) {
            for (int i = 0; i < xs.length; i++) {
                int here = index(i, j);
                if (eastward[here]) {
                    network.addFloorRun(nodes[here], nodes[index(i + 1, j)], xs[i + 1] - xs[i], Direction.X);
                }
                if (northward[here]) {
                    network.addFloorRun(nodes[here], nodes[index(i, j + 1)], ys[j + 1] - ys[j], Direction.Y);
                }
            }
        }
    }

    private boolean meetsRun(int i, int j) {
        return eastward[index(i, j)]
                || northward[index(i, j)]
                || (i > 0 && eastward[index(i - 1, j)])
                || (j > 0 && northward[index(i, j - 1)]);
    }

    /** The node at a place, or {@link #NONE} where the floor has none. */
    int nodeAt(PlanPoint at) {
        int i = Arrays.binarySearch(xs, at.x());
        int j = Arrays.binarySearch(ys, at.y());
        return i < 0 || j < 0 ? NONE : nodes[index(i, j)];
    }

    /** Places of the floor on a segment parallel to an axis, ends included. */
    List<PlanPoint> placesAlong(PlanSegment segment) {
        long[] along = segment.isAlongX() ? xs : ys;
        long low = segment.isAlongX() ? segment.lowX() : segment.lowY();
        long high = segment.isAlongX() ? segment.highX() : segment.highY();
        return Arrays.stream(
                        along,
                        firstAtLeast(along, low),
                        Math.max(firstAtLeast(along, low), lastAtMost(along, high) + 1))
                .mapToObj(value -> segment.isAlongX()
                        ? new PlanPoint(value, segment.lowY())
                        : new PlanPoint(segment.lowX(), value))
                .filter(place -> nodeAt(place) != NONE)
                .toList();
    }

    private int index(int i, int j) {
        return j * xs.length + i;
    }

    private static int firstAtLeast(long[] sorted, long value) {
        int found = Arrays.binarySearch(sorted, value);
        return found >= 0 ? found : -found - 1;
    }

    private static int lastAtMost(long[] sorted, long value) {
        int found = Arrays.binarySearch(sorted, value);
        return found >= 0 ? found : -found - 2;
    }
}
