package org.bondspan.viewer.plan;

import java.awt.geom.Point2D;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.bondspan.sheet.plan.PlanView;
import org.jspecify.annotations.Nullable;

/** What the pointer does on a plan: the wheel zooms at it, a drag pans, a click selects or measures. */
final class PlanMouse {
    /** How much closer for each pixel of scrolling; a notch of a wheel is 40 of them. */
    private static final double ZOOM = Math.log(1.2) / 40;

    private final PlanPane pane;
    private @Nullable Drag drag;

    private record Drag(Camera camera, PlanView view, double x, double y) {}

    PlanMouse(PlanPane pane) {
        this.pane = pane;
    }

    void listen() {
        pane.setOnMousePressed(this::pressed);
        pane.setOnMouseDragged(this::dragged);
        pane.setOnMouseReleased(event -> released());
        pane.setOnMouseClicked(this::clicked);
        pane.setOnMouseMoved(this::moved);
        pane.setOnMouseExited(event -> pane.aim(Optional.empty()));
        pane.setOnScroll(this::scrolled);
        pane.setOnZoom(this::pinched);
    }

    private void moved(MouseEvent event) {
        pane.aim(pane.find(event.getX(), event.getY()));
        pane.scene()
                .ifPresent(shown -> pane.setCursor(findCrowd(event, shown)
                        .map(crowd -> Cursor.HAND)
                        .orElseGet(() -> PlanPane.cursor(shown.tool()))));
    }

    /** The crowd whose words a click would go after. */
    private Optional<Crowd> findCrowd(MouseEvent event, PlanScene shown) {
        return shown.tool() == Tool.LOOK ? pane.findCrowd(event.getX(), event.getY()) : Optional.empty();
    }

    private void pressed(MouseEvent event) {
        pane.requestFocus();
        pane.scene()
                .ifPresent(shown -> pane.view()
                        .ifPresent(view -> drag = new Drag(shown.camera(), view, event.getX(), event.getY())));
        event.consume();
    }

    private void dragged(MouseEvent event) {
        if (drag != null && !event.isStillSincePress()) {
            double nanometres = 1 / drag.view().pointsPerNanometre();
            pane.setCursor(Cursor.CLOSED_HAND);
            pane.look(drag.camera()
                    .moved((drag.x() - event.getX()) * nanometres, (event.getY() - drag.y()) * nanometres));
        }
        event.consume();
    }

    private void released() {
        drag = null;
        pane.scene().ifPresent(shown -> pane.setCursor(PlanPane.cursor(shown.tool())));
    }

    private void clicked(MouseEvent event) {
        if (event.getButton() != MouseButton.PRIMARY || !event.isStillSincePress()) {
            return;
        }
        pane.scene().ifPresent(shown -> {
            Optional<Crowd> crowd = findCrowd(event, shown);
            if (crowd.isPresent()) {
                pane.lookInto(crowd.get());
            } else if (shown.tool() == Tool.LOOK) {
                pane.select(pane.find(event.getX(), event.getY()));
            } else {
                pane.measureAt(event.getX(), event.getY());
            }
        });
        event.consume();
    }

    private void scrolled(ScrollEvent event) {
        zoom(Math.exp(event.getDeltaY() * ZOOM), event.getX(), event.getY());
        event.consume();
    }

    private void pinched(ZoomEvent event) {
        zoom(event.getZoomFactor(), event.getX(), event.getY());
        event.consume();
    }

    private void zoom(double factor, double x, double y) {
        if (factor == 1) {
            return;
        }
        pane.scene()
                .ifPresent(shown -> pane.view()
                        .ifPresent(view ->
                                pane.look(shown.camera().zoomed(factor, view.placeAt(new Point2D.Double(x, y))))));
    }
}
