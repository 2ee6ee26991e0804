package org.bondspan.usecase;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes the same plan, given in whole feet, moved, mirrored, with x and y swapped, or in metres.
 *
 * @param signX -1 mirrors in x
 * @param signY -1 mirrors in y
 */
record Pen(int signX, int signY, boolean swapped, int moveX, int moveY, String unit) {
    static final Pen PLAIN = new Pen(1, 1, false, 0, 0, "ft");
    static final Pen MOVED = new Pen(1, 1, false, -17, 230, "ft");
    static final Pen MIRRORED_IN_X = new Pen(-1, 1, false, 0, 0, "ft");
    static final Pen MIRRORED_IN_Y = new Pen(1, -1, false, 0, 0, "ft");
    static final Pen SWAPPED = new Pen(1, 1, true, 0, 0, "ft");
    static final Pen IN_METRES = new Pen(1, 1, false, 0, 0, "m");

    private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");

    /** A place in whole feet. */
    record Spot(int x, int y, int z) {
        static Spot of(int x, int y) {
            return new Spot(x, y, 0);
        }
    }

    String length(int feet) {
        BigDecimal value = BigDecimal.valueOf(feet);
        return (unit.equals("ft") ? value : value.multiply(METRES_PER_FOOT)).toPlainString();
    }

    String x(int x, int y) {
        return length(swapped ? signY * y + moveX : signX * x + moveX);
    }

    String y(int x, int y) {
        return length(swapped ? signX * x + moveY : signY * y + moveY);
    }

    String plan(Spot spot) {
        return "[" + x(spot.x(), spot.y()) + ", " + y(spot.x(), spot.y()) + "]";
    }

    String outline(List<Spot> spots) {
        return spots.stream().map(this::plan).collect(Collectors.joining(", ", "[", "]"));
    }

    String line(List<Spot> spots) {
        return spots.stream()
                .map(spot -> "[" + x(spot.x(), spot.y()) + ", " + y(spot.x(), spot.y()) + ", " + length(spot.z()) + "]")
                .collect(Collectors.joining(", ", "[", "]"));
    }

    String connections(String level, List<Spot> spots) {
        return spots.stream()
                .map(spot -> "{\"level\": \"%s\", \"at\": %s, \"height\": %s}"
                        .formatted(level, plan(spot), length(spot.z())))
                .collect(Collectors.joining(", ", "\"connections\": [", "]"));
    }
}
