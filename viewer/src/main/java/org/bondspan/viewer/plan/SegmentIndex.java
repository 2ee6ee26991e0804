package org.bondspan.viewer.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.PlanPoint;

/**
 * Finds the items of a picture near a place: a grid of square cells in plan units, each with the items that pass
 * through it. Built once for a picture, in time near linear in its segments.
 */
final class SegmentIndex {
    private static final int MOST_CELLS = 1 << 16;
    private static final int SEGMENTS_TO_A_CELL = 2;

    private final Picture picture;
    private final Bounds bounds;
    private final double cell;
    private final int columns;
    private final int rows;

    /** Items of cell {@code i} stand from {@code first[i]} to {@code first[i + 1]}. */
    private final int[] first;

    private final int[] items;

    SegmentIndex(Picture picture) {
        this.picture = picture;
        this.bounds = picture.items().isEmpty() ? new Bounds(0, 0, 0, 0) : picture.bounds();
        long segments =
                picture.items().stream().mapToLong(item -> item.places().size()).sum();
        double cells = Math.max(1, Math.min(MOST_CELLS, (double) segments / SEGMENTS_TO_A_CELL));
        double longer = Math.max(1, Math.max(bounds.width(), bounds.height()));
        double area = Math.max(bounds.width(), longer / cells) * Math.max(bounds.height(), longer / cells);
        this.cell = Math.sqrt(area / cells);
        this.columns = (int) Math.min(MOST_CELLS, bounds.width() / cell) + 1;
        this.rows = (int) Math.min(MOST_CELLS, bounds.height() / cell) + 1;
        this.first = new int[columns * rows + 1];
        eachCell((at, item) -> first[at + 1]++);
        Arrays.parallelPrefix(first, Integer::sum);
        this.items = new int[first[columns * rows]];
        int[] next = first.clone();
        eachCell((at, item) -> items[next[at]++] = item);
    }

    Picture picture() {
        return picture;
    }

    Bounds bounds() {
        return bounds;
    }

    /** The items that may lie within, or in whose inside it lies; in the order in which they are painted. */
    List<Item> near(Bounds region) {
        BitSet found = new BitSet(picture.items().size());
        int lastColumn = column(region.east());
        int lastRow = row(region.north());
        for (int row = row(region.south()); row <= lastRow; row++) {
            for (int column = column(region.west()); column <= lastColumn; column++) {
                int at = row * columns + column;
                for (int i = first[at]; i < first[at + 1]; i++) {
                    found.set(items[i]);
                }
            }
        }
        List<Item> near = new ArrayList<>(found.cardinality());
        for (int i = found.nextSetBit(0); i >= 0; i = found.nextSetBit(i + 1)) {
            near.add(picture.items().get(i));
        }
        return near;
    }

    private int column(long x) {
        return (int) Math.max(0, Math.min(columns - 1.0, ((double) x - bounds.west()) / cell));
    }

    private int row(long y) {
        return row((double) y);
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1.0, (y - bounds.south()) / cell));
    }

    private interface Filler {
        void put(int cell, int item);
    }

    private void eachCell(Filler filler) {
        for (int i = 0; i < picture.items().size(); i++) {
            Item item = picture.items().get(i);
            List<PlanPoint> places = item.places();
            if (item instanceof Item.Area || places.size() == 1) {
                fill(Bounds.around(places), i, filler);
            }
            for (int p = 1; p < places.size(); p++) {
                walk(places.get(p - 1), places.get(p), i, filler);
            }
        }
    }

    private void fill(Bounds box, int item, Filler filler) {
        for (int row = row(box.south()); row <= row(box.north()); row++) {
            for (int column = column(box.west()); column <= column(box.east()); column++) {
                filler.put(row * columns + column, item);
            }
        }
    }

    /** The cells of each column that the segment passes there, with those that it only touches. */
    private void walk(PlanPoint a, PlanPoint b, int item, Filler filler) {
        PlanPoint west = a.x() <= b.x() ? a : b;
        PlanPoint east = a.x() <= b.x() ? b : a;
        int last = column(east.x());
        for (int column = column(west.x()); column <= last; column++) {
            double enter = Math.max((double) west.x(), bounds.west() + column * cell);
            double leave = Math.min((double) east.x(), bounds.west() + (column + 1) * cell);
            int one = row(yAt(west, east, enter));
            int other = row(yAt(west, east, leave));
            int from = west.x() == east.x() ? Math.min(row(west.y()), row(east.y())) : Math.min(one, other);
            int to = west.x() == east.x() ? Math.max(row(west.y()), row(east.y())) : Math.max(one, other);
            for (int row = from; row <= to; row++) {
                filler.put(row * columns + column, item);
            }
        }
    }

    private static double yAt(PlanPoint west, PlanPoint east, double x) {
        return west.x() == east.x()
                ? (double) west.y()
                : (double) west.y() + (x - west.x()) / ((double) east.x() - west.x()) * ((double) east.y() - west.y());
    }
}
