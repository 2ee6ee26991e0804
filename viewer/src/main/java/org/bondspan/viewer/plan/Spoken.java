package org.bondspan.viewer.plan;

import java.util.Optional;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Picture;

/** The plan in words, for those who do not see it. */
final class Spoken {
    private Spoken() {}

    static String of(PlanScene scene, Optional<String> aimed) {
        long conductors = scene.picture().items().stream()
                .filter(item -> item instanceof Item.Run && item.layer() == Layer.CONDUCTORS)
                .map(Item::id)
                .distinct()
                .count();
        StringBuilder text = new StringBuilder("Plan of level "
                + scene.picture().level() + ", " + conductors + (conductors == 1 ? " conductor" : " conductors"));
        aimed.ifPresent(id -> text.append(". Here: ").append(words(scene.picture(), id)));
        scene.selected().ifPresent(id -> text.append(". Selected: ").append(words(scene.picture(), id)));
        return text.toString();
    }

    private static String words(Picture picture, String id) {
        return picture.notes().stream()
                .filter(note -> note.id().equals(id) && note.layer() != Layer.KEYNOTES)
                .findFirst()
                .map(note -> String.join(", ", note.lines()))
                .orElse(id);
    }
}
