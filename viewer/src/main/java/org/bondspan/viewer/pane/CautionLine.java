package org.bondspan.viewer.pane;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import org.bondspan.viewer.model.Cautions;
import org.bondspan.viewer.state.Desk;

/** The first caution above every answer, with the others a pointer away; all stand in the schedule. */
final class CautionLine implements Pane {
    private final Label line = Controls.label("", "first-caution");
    private final Tooltip all = new Tooltip();

    CautionLine() {
        line.setId("caution");
        line.setTooltip(all);
    }

    @Override
    public Node node() {
        return line;
    }

    @Override
    public void show(Desk desk) {
        List<String> cautions = Cautions.of(desk).cautions();
        line.setText(cautions.stream().findFirst().orElse(""));
        all.setText(String.join("\n", cautions));
    }
}
