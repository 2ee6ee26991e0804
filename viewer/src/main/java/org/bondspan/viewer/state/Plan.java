package org.bondspan.viewer.state;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Link;
import org.bondspan.layout.SiteCheck;
import org.bondspan.layout.SiteStates;
import org.bondspan.layout.Status;
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
 * @param states what a check says of its parts before it is routed, or its answer
 * @param cost installed, in the currency of the prices; empty without prices and where one is missing
 * @param pictures by id of the level, in the order of the site
 * @param extents around all that each picture shows
 */
public record Plan(
        Site site,
        SiteStates states,
        Optional<Money> cost,
        Map<String, Picture> pictures,
        Map<String, Bounds> extents) {
    public Plan {
        pictures = Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
        extents = Map.copyOf(extents);
    }

    /** With an answer. Draws all levels, which takes its time on large sites. */
    public static Plan routed(Site site, Layout layout, Optional<Money> cost) {
        return drawn(site, layout, cost, level -> LevelPicture.of(site, layout, level));
    }

    /** Before there is an answer; draws all levels too. */
    public static Plan unrouted(Site site, SiteCheck check) {
        return drawn(site, check, Optional.empty(), level -> LevelPicture.of(site, check, level));
    }

    private static Plan drawn(Site site, SiteStates states, Optional<Money> cost, Function<Level, Picture> draw) {
        Map<String, Picture> pictures = new LinkedHashMap<>();
        Map<String, Bounds> extents = new HashMap<>();
        for (Level level : site.levels()) {
            Picture picture = draw.apply(level);
            pictures.put(level.id(), picture);
            extents.put(level.id(), picture.bounds());
        }
        return new Plan(site, states, cost, pictures, extents);
    }

    /** The answer; empty before there is one. */
    public Optional<Layout> layout() {
        return states instanceof Layout layout ? Optional.of(layout) : Optional.empty();
    }

    /** Whether there is an interconnection, so that what is to be bonded is. */
    public boolean isRouted() {
        return layout().filter(layout -> layout.status() != Status.IMPOSSIBLE).isPresent();
    }

    public List<Conductor> conductors() {
        return layout().map(Layout::conductors).orElse(List.of());
    }

    /** Metal that carries in the answer. */
    public List<Link> links() {
        return layout().map(Layout::links).orElse(List.of());
    }

    /** The currency of the prices; empty text without prices. */
    public String currency() {
        return site.prices().map(prices -> prices.currency()).orElse("");
    }
}
