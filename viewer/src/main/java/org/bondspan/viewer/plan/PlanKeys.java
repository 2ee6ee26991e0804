package org.bondspan.viewer.plan;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.PlanView;

/** The plan by keyboard. Tab is left alone, so that one can leave the plan again (WCAG 2.1, 2.1.2). */
final class PlanKeys {
    static final String HELP = "Arrow keys move the plan, plus and minus zoom, Home shows all of it, C looks into where"
            + " conductors crowd. N and P step to the next and the previous item, Enter selects it, Escape clears the"
            + " selection.";

    private static final double STEP = 0.12;
    private static final double ZOOM = 1.25;

    private final PlanPane pane;

    PlanKeys(PlanPane pane) {
        this.pane = pane;
    }

    void listen() {
        pane.setOnKeyPressed(event -> {
            boolean plain = !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
            if (plain
                    && pane.scene()
                            .map(shown -> press(event.getCode(), event, shown))
                            .orElse(false)) {
                event.consume();
            }
        });
    }

    private boolean press(KeyCode key, KeyEvent event, PlanScene shown) {
        switch (key) {
            case LEFT, KP_LEFT -> move(shown, -STEP, 0);
            case RIGHT, KP_RIGHT -> move(shown, STEP, 0);
            case UP, KP_UP -> move(shown, 0, STEP);
            case DOWN, KP_DOWN -> move(shown, 0, -STEP);
            case PLUS, EQUALS, ADD -> pane.look(shown.camera().zoomed(ZOOM));
            case MINUS, SUBTRACT, UNDERSCORE -> pane.look(shown.camera().zoomed(1 / ZOOM));
            case HOME, DIGIT0, NUMPAD0 ->
                pane.look(Camera.around(shown.picture().bounds()));
            case C -> pane.findCrowd().ifPresent(pane::lookInto);
            case N -> step(shown, event.isShiftDown() ? -1 : 1);
            case P -> step(shown, -1);
            case ENTER, SPACE -> enter(shown);
            case ESCAPE -> {
                return clear(shown);
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void move(PlanScene shown, double right, double up) {
        pane.view().ifPresent(view -> pane.look(shown.camera().moved(right * seenWidth(view), up * seenHeight(view))));
    }

    private static double seenWidth(PlanView view) {
        return view.frame().getWidth() / view.pointsPerNanometre();
    }

    private static double seenHeight(PlanView view) {
        return view.frame().getHeight() / view.pointsPerNanometre();
    }

    private void step(PlanScene shown, int by) {
        List<String> ids = Steps.of(shown.picture(), shown.layers());
        Optional<String> from = pane.aimed().or(shown::selected);
        Steps.next(ids, from, by).ifPresent(id -> {
            pane.aim(Optional.of(id));
            shown.extent(id).ifPresent(bounds -> reveal(shown, bounds));
        });
    }

    private void reveal(PlanScene shown, Bounds bounds) {
        Camera camera = shown.camera().revealing(bounds);
        if (!camera.equals(shown.camera())) {
            pane.look(camera);
        }
    }

    private void enter(PlanScene shown) {
        if (shown.tool() == Tool.LOOK) {
            pane.aimed().ifPresent(id -> pane.select(Optional.of(id)));
        } else {
            pane.measureAtAim();
        }
    }

    private boolean clear(PlanScene shown) {
        boolean any = shown.selected().isPresent() || pane.aimed().isPresent();
        pane.aim(Optional.empty());
        if (shown.selected().isPresent()) {
            pane.select(Optional.empty());
        }
        return any;
    }
}
