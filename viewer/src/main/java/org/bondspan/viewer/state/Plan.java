package org.bondspan.viewer.state;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.Level;
import org.bondspan.site.Site;
import org.bondspan.units.Money;

/**
 * A site, what is known about its interconnection, and the picture of each level, made once.
 *
 * @param site as it was asked about
 * @param layout its answer, or what a check says of it before it is routed
 * @param cost installed, in the currency of the prices; empty without prices and where one is missing
 * @param pictures by id of the level, in the order of the site
 * @param extents around all that each picture shows
 */
public record Plan(
        Site site, Layout layout, Optional<Money> cost, Map<String, Picture> pictures, Map<String, Bounds> extents) {
    public Plan {
        pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
        extents = Map.copyOf(extents);
    }

    /** Draws all levels, which takes its time on large sites. */
    public static Plan drawn(Site site, Layout layout, Optional<Money> cost) {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        Map<String, Bounds> extents = new HashMap<>();
        for (Level level : site.levels()) {
            Picture picture = LevelPicture.of(site, layout, level);
            pictures.put(level.id(), picture);
            extents.put(level.id(), picture.bounds());
        }
        return new Plan(site, layout, cost, pictures, extents);
    }

    /** The currency of the prices; empty text without prices. */
    public String currency() {
        return site.prices().map(prices -> prices.currency()).orElse("");
    }
}
