package org.bondspan.viewer.pane;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.plan.PlanPane;
import org.bondspan.viewer.state.Looking;

/** A plan under its title. */
final class SheetView extends BorderPane {
    private final PlanPane plan = new PlanPane();
    private final Label title = Controls.label("", "sheet-title");

    SheetView(String id, Actions actions, Consumer<Optional<String>> hover) {
        plan.setId(id);
        title.setId(id + "-title");
        title.setMaxWidth(Double.MAX_VALUE);
        plan.onCamera(camera -> actions.run(Looking.through(camera)));
        plan.onSelect(picked -> actions.run(picked.map(Looking::select).orElseGet(Looking::selectNothing)));
        plan.onHover(hover);
        plan.onMeasure(actions::measure);
        plan.setMinSize(0, 0);
        setCenter(plan);
        setMinWidth(120);
    }

    PlanPane plan() {
        return plan;
    }

    void show(Scenes.Titled next, boolean titled) {
        title.setText(next.title());
        setTop(titled ? title : null);
        plan.show(next.scene());
    }
}
