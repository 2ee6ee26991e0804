package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Straight lines on paper, found quickly by where they pass. Lengths in points. */
final class SegmentGrid {
    private static final double CELL = 24;

    private final Map<Long, List<Line2D>> cells = new HashMap<>();

    void add(Line2D line) {
        Rectangle2D bounds = line.getBounds2D();
        for (long x = cell(bounds.getMinX()); x <= cell(bounds.getMaxX()); x++) {
            for (long y = cell(bounds.getMinY()); y <= cell(bounds.getMaxY()); y++) {
                if (new Rectangle2D.Double(x * CELL, y * CELL, CELL, CELL).intersectsLine(line)) {
                    cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(line);
                }
            }
        }
    }

    private static long cell(double coordinate) {
        return (long) Math.floor(coordinate / CELL);
    }

    private static long key(long x, long y) {
        return x * 1_000_003L + y;
    }

    /** How many of the lines cross the box; one in several cells counts in each. */
    int crossing(Rectangle2D box) {
        int count = 0;
        for (long x = cell(box.getMinX()); x <= cell(box.getMaxX()); x++) {
            for (long y = cell(box.getMinY()); y <= cell(box.getMaxY()); y++) {
                for (Line2D line : cells.getOrDefault(key(x, y), List.of())) {
                    count += box.intersectsLine(line) ? 1 : 0;
                }
            }
        }
        return count;
    }

    /** The lines that cross the box. */
    Set<Line2D> listCrossing(Rectangle2D box) {
        Set<Line2D> lines = new LinkedHashSet<>();
        for (long x = cell(box.getMinX()); x <= cell(box.getMaxX()); x++) {
            for (long y = cell(box.getMinY()); y <= cell(box.getMaxY()); y++) {
                cells.getOrDefault(key(x, y), List.of()).stream()
                        .filter(box::intersectsLine)
                        .forEach(lines::add);
            }
        }
        return lines;
    }

    /** From the line to the nearest place of the box; nothing where it crosses the box. */
    static double distance(Line2D line, Rectangle2D box) {
        if (box.intersectsLine(line)) {
            return 0;
        }
        double fromEnds =
                Math.min(distance(line.getX1(), line.getY1(), box), distance(line.getX2(), line.getY2(), box));
        double fromWest =
                Math.min(line.ptSegDist(box.getMinX(), box.getMinY()), line.ptSegDist(box.getMinX(), box.getMaxY()));
        double fromEast =
                Math.min(line.ptSegDist(box.getMaxX(), box.getMinY()), line.ptSegDist(box.getMaxX(), box.getMaxY()));
        return Math.min(fromEnds, Math.min(fromWest, fromEast));
    }

    private static double distance(double x, double y, Rectangle2D box) {
        double dx = Math.max(0, Math.max(box.getMinX() - x, x - box.getMaxX()));
        double dy = Math.max(0, Math.max(box.getMinY() - y, y - box.getMaxY()));
        return Math.hypot(dx, dy);
    }

    /** How many of the lines cross that one. */
    int crossing(Line2D other) {
        Rectangle2D box = other.getBounds2D();
        int count = 0;
        for (long x = cell(box.getMinX()); x <= cell(box.getMaxX()); x++) {
            for (long y = cell(box.getMinY()); y <= cell(box.getMaxY()); y++) {
                for (Line2D line : cells.getOrDefault(key(x, y), List.of())) {
                    count += line.intersectsLine(other) ? 1 : 0;
                }
            }
        }
        return count;
    }
}
