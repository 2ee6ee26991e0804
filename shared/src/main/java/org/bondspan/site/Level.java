package org.bondspan.site;

import java.util.List;
import java.util.Optional;
import org.bondspan.units.Length;

/**
 * One level of the building.
 *
 * @param floor elevation of its floor
 * @param outline a simple polygon, at least three vertices
 * @param openHeight where the floor is open to copper: the height above the floor at which it runs
 */
public record Level(
        String id,
        Length floor,
        List<PlanPoint> outline,
        Optional<Length> openHeight,
        List<ClosedArea> closedAreas,
        List<Wall> walls) {
    public Level {
        outline = List.copyOf(outline);
        closedAreas = List.copyOf(closedAreas);
        walls = List.copyOf(walls);
    }
}
