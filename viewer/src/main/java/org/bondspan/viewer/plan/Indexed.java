package org.bondspan.viewer.plan;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Picture;

/** A picture with all that is worked out for it once. Equal to itself alone, so that it is quickly compared. */
final class Indexed {
    private final Picture picture;
    private final Bounds bounds;
    private final PlanRaster raster;
    private final PickIndex picks;
    private final Map<String, List<Item>> itemsById;

    /** Takes some tens of milliseconds for 50,000 segments. */
    Indexed(Picture picture) {
        SegmentIndex index = new SegmentIndex(picture);
        this.picture = picture;
        this.bounds = index.bounds();
        this.raster = new PlanRaster(index);
        this.picks = new PickIndex(index);
        this.itemsById = picture.items().stream().collect(Collectors.groupingBy(Item::id));
    }

    Picture picture() {
        return picture;
    }

    /** Around all items. */
    Bounds bounds() {
        return bounds;
    }

    PlanRaster raster() {
        return raster;
    }

    PickIndex picks() {
        return picks;
    }

    List<Item> items(String id) {
        return itemsById.getOrDefault(id, List.of());
    }

    /** Identity, because to compare tens of thousands of items at each frame would take longer than to paint them. */
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(Picture other) {
        return picture == other;
    }
}
