package org.bondspan.viewer.state;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.PlanPoint;

/** Where things lie in the pictures that are shown. */
public final class Whereabouts {
    private Whereabouts() {}

    /** The level that shows it: the one that is seen, if it lies there too. */
    public static Optional<String> findLevel(Desk desk, String id) {
        List<String> levels = shown(desk).stream()
                .flatMap(pictures -> pictures.entrySet().stream())
                .filter(entry -> holds(entry.getValue(), id))
                .map(Map.Entry::getKey)
                .toList();
        return levels.contains(desk.look().level())
                ? Optional.of(desk.look().level())
                : levels.stream().findFirst();
    }

    /** All places of it on the level that is seen. */
    public static List<PlanPoint> places(Desk desk, String id) {
        Set<PlanPoint> places = new LinkedHashSet<>();
        shown(desk)
                .map(pictures -> pictures.get(desk.look().level()))
                .ifPresent(picture -> picture.items().stream()
                        .filter(item -> item.id().equals(id))
                        .forEach(item -> places.addAll(item.places())));
        return List.copyOf(places);
    }

    /** Around all that the seen level shows; the same for plans side by side. */
    public static Optional<Bounds> findExtent(Desk desk) {
        return desk.plan().map(plan -> plan.extents().get(desk.look().level()));
    }

    private static boolean holds(Picture picture, String id) {
        return picture.items().stream().anyMatch(item -> item.id().equals(id));
    }

    /** Those of the proposal where it is shown, else those of the answer. */
    private static Optional<Map<String, Picture>> shown(Desk desk) {
        return desk.proposal().map(Reviewed::pictures).or(() -> desk.plan().map(Plan::pictures));
    }
}
