package org.bondspan.sheet.plan;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Lines on paper with what they belong to, to tell whose words a reader takes words for. Lengths in points. */
final class OwnedLines {
    private final SegmentGrid grid = new SegmentGrid();
    private final Map<String, List<Line2D>> byOwner = new HashMap<>();
    private final IdentityHashMap<Line2D, String> owners = new IdentityHashMap<>();

    /** A line of that owner; one without extent is a place. */
    void add(String owner, Line2D line) {
        byOwner.computeIfAbsent(owner, key -> new ArrayList<>()).add(line);
        owners.put(line, owner);
        grid.add(line);
    }

    List<Line2D> of(String owner) {
        return byOwner.getOrDefault(owner, List.of());
    }

    /** Whether the box is nearer to what that one owns than to what any other does, by so much at least. */
    boolean isNearest(String owner, Rectangle2D box, double clearly) {
        double own = of(owner).stream()
                .mapToDouble(line -> SegmentGrid.distance(line, box))
                .min()
                .orElse(0);
        return !isOtherWithin(owner, box, own + clearly);
    }

    /** Whether something that others own lies nearer to the box than that. */
    boolean isOtherWithin(String owner, Rectangle2D box, double distance) {
        Rectangle2D around = new Rectangle2D.Double(
                box.getX() - distance,
                box.getY() - distance,
                box.getWidth() + 2 * distance,
                box.getHeight() + 2 * distance);
        return grid.listCrossing(around).stream()
                .filter(line -> !owner.equals(owners.get(line)))
                .anyMatch(line -> SegmentGrid.distance(line, box) < distance);
    }
}
