package org.bondspan.viewer.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.util.Duration;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.PlanView;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the words of a plan: moves them with the camera, and has them placed anew once it rests. On the JavaFX thread.
 */
final class LabelPlacing {
    private static final Duration REST = Duration.millis(140);
    private static final String NEARER = "Look nearer: click, or C";

    private final Latest placer = new Latest("plan lettering");
    private final PauseTransition rest = new PauseTransition(REST);
    private final Runnable onPlaced;
    private @Nullable Wanted wanted;
    private @Nullable Wanted placed;
    private @Nullable Lettering lettering;

    private record Wanted(Indexed picture, PlanView view, Set<Layer> layers, Labels labels) {
        boolean sameWords(Wanted other) {
            return picture.equals(other.picture) && layers.equals(other.layers) && labels == other.labels;
        }

        Lettering place() {
            return Lettering.place(picture.raster(), picture.picture(), view, layers, labels, List.of(NEARER));
        }
    }

    /** {@code onPlaced} is called when words have new places. */
    LabelPlacing(Runnable onPlaced) {
        this.onPlaced = onPlaced;
        rest.setOnFinished(event -> place());
    }

    /** The words as they stand in this view now; none of another picture, nor of layers that are off. */
    Lettering show(Indexed picture, PlanView view, Set<Layer> layers, Labels labels) {
        Wanted next = new Wanted(picture, view, layers, labels);
        if (!next.equals(wanted)) {
            boolean moved = wanted != null && wanted.sameWords(next);
            wanted = next;
            if (moved) {
                rest.playFromStart();
            } else {
                rest.stop();
                place();
            }
        }
        return lettering == null || placed == null || !placed.picture().equals(picture) || placed.labels() != labels
                ? Lettering.none(view)
                : lettering.moved(view);
    }

    private void place() {
        Wanted job = wanted;
        if (job != null) {
            placer.execute(() -> {
                Lettering result = job.place();
                Platform.runLater(() -> placed(job, result));
            });
        }
    }

    private void placed(Wanted job, Lettering result) {
        placed = job;
        lettering = result;
        onPlaced.run();
    }

    /** Whether the words stand where they belong in the view shown last. */
    boolean isSettled() {
        return wanted != null && wanted.equals(placed);
    }

    /** The words as they stand in the view shown last. */
    Optional<Lettering> words() {
        return lettering == null || wanted == null ? Optional.empty() : Optional.of(lettering.moved(wanted.view()));
    }
}
