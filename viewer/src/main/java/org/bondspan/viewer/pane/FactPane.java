package org.bondspan.viewer.pane;

import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.model.FactSheet;
import org.bondspan.viewer.model.FactSheets;
import org.bondspan.viewer.state.Desk;

/** All there is to say about what is selected, or about the site. */
final class FactPane implements Pane {
    private static final double NAMES = 92;

    private final Label title = Controls.label("", "fact-title");
    private final Label subtitle = Controls.label("", "quiet");
    private final GridPane grid = new GridPane();
    private final ScrollPane scroll = new ScrollPane();
    private Optional<FactSheet> shown = Optional.empty();

    FactPane() {
        grid.getStyleClass().add("facts");
        ColumnConstraints names = new ColumnConstraints(NAMES, NAMES, NAMES);
        ColumnConstraints values = new ColumnConstraints();
        values.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(names, values);
        title.setId("fact-title");
        title.setWrapText(true);
        subtitle.setId("fact-subtitle");
        subtitle.setWrapText(true);
        VBox content = new VBox(2, title, subtitle, grid);
        content.getStyleClass().add("fact-sheet");
        scroll.setContent(content);
        scroll.setId("facts");
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(true);
        scroll.getStyleClass().add("quiet-scroll");
    }

    @Override
    public Node node() {
        return scroll;
    }

    @Override
    public void show(Desk desk) {
        Optional<FactSheet> next = FactSheets.selected(desk);
        if (next.equals(shown)) {
            return;
        }
        shown = next;
        grid.getChildren().clear();
        grid.getRowConstraints().clear();
        title.setText(next.map(FactSheet::title).orElse(""));
        subtitle.setText(next.map(FactSheet::subtitle).orElse(""));
        scroll.setAccessibleText(next.map(FactSheet::spoken).orElse("Nothing opened"));
        next.ifPresent(sheet -> sheet.facts().forEach(this::add));
        scroll.setVvalue(0);
    }

    private void add(FactSheet.Fact fact) {
        int row = grid.getRowConstraints().size();
        RowConstraints constraints = new RowConstraints();
        constraints.setValignment(VPos.TOP);
        grid.getRowConstraints().add(constraints);
        Label name = Controls.label(fact.name(), "quiet", "fact-name");
        name.setWrapText(true);
        Label value = Controls.label(fact.value(), "fact-value");
        value.setWrapText(true);
        grid.addRow(row, name, value);
    }
}
