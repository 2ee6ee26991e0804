package org.bondspan.viewer.plan;

import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Picture;

/** The order in which the keyboard steps through a plan: services, electrodes, conductors, joints, then the rest. */
final class Steps {
    private static final List<Layer> ORDER = List.of(
            Layer.SERVICES,
            Layer.ELECTRODES,
            Layer.CONDUCTORS,
            Layer.JOINTS,
            Layer.RISERS,
            Layer.PIPING,
            Layer.NOT_PERMITTED,
            Layer.FRAME,
            Layer.CLOSED_AREAS,
            Layer.BUILDING,
            Layer.ALLOWED_COPPER,
            Layer.KEYNOTES);

    private Steps() {}

    /** Every id once, of the layers that are on. */
    static List<String> of(Picture picture, Set<Layer> layers) {
        Map<Layer, Set<String>> ids = new EnumMap<>(Layer.class);
        for (Item item : picture.items()) {
            ids.computeIfAbsent(item.layer(), layer -> new LinkedHashSet<>()).add(item.id());
        }
        return ORDER.stream()
                .filter(layers::contains)
                .flatMap(layer -> ids.getOrDefault(layer, Set.of()).stream())
                .distinct()
                .toList();
    }

    /** So many steps on from an id, round at the ends; from nowhere to the first or the last. */
    static Optional<String> next(List<String> ids, Optional<String> from, int by) {
        if (ids.isEmpty()) {
            return Optional.empty();
        }
        int at = from.map(ids::indexOf).orElse(-1);
        int start = at < 0 && by < 0 ? 0 : at;
        return Optional.of(ids.get(Math.floorMod(start + by, ids.size())));
    }
}
