package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Boxes on paper, found quickly by where they lie. Lengths in points. */
final class BoxGrid {
    private static final double CELL = 48;

    private final Map<Long, List<Rectangle2D>> cells = new HashMap<>();

    void add(Rectangle2D box) {
        for (long x = cell(box.getMinX()); x <= cell(box.getMaxX()); x++) {
            for (long y = cell(box.getMinY()); y <= cell(box.getMaxY()); y++) {
                cells.computeIfAbsent(key(x, y), k -> new ArrayList<>()).add(box);
            }
        }
    }

    private static long cell(double coordinate) {
        return (long) Math.floor(coordinate / CELL);
    }

    private static long key(long x, long y) {
        return x * 1_000_003L + y;
    }

    boolean overlaps(Rectangle2D box) {
        return any(box, box::intersects);
    }

    boolean isCrossedBy(Line2D line) {
        return any(line.getBounds2D(), other -> other.intersectsLine(line));
    }

    private boolean any(Rectangle2D region, Predicate<Rectangle2D> test) {
        for (long x = cell(region.getMinX()); x <= cell(region.getMaxX()); x++) {
            for (long y = cell(region.getMinY()); y <= cell(region.getMaxY()); y++) {
                if (cells.getOrDefault(key(x, y), List.of()).stream().anyMatch(test)) {
                    return true;
                }
            }
        }
        return false;
    }
}
