package org.bondspan.viewer.pane;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.bondspan.layout.Objective;
import org.bondspan.site.CodeEdition;
import org.bondspan.viewer.model.Differences;
import org.bondspan.viewer.model.Switch;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Opened;

/**
 * The question that is asked of the site: what may carry, by which edition, what is to be least; and what that changes.
 */
final class QuestionPane implements Pane {
    private final Actions actions;
    private final FlowPane row = new FlowPane(14, 4);
    private final Map<Switch.What, CheckBox> boxes = new EnumMap<>(Switch.What.class);
    private final ComboBox<String> edition = new ComboBox<>();
    private final ComboBox<String> objective = new ComboBox<>();
    private final Label change = Controls.label("", "change");
    private final Echo echo;

    QuestionPane(Actions actions) {
        this.actions = actions;
        this.echo = new Echo(() -> show(actions.desk()));
        row.getStyleClass().add("question");
        row.setAlignment(Pos.CENTER_LEFT);
        row.getChildren().add(group("May carry", switches()));
        edition.setId("edition");
        for (CodeEdition one : CodeEdition.values()) {
            edition.getItems().add(String.valueOf(one.year()));
        }
        edition.setOnAction(event -> echo.hear(() -> actions.edition(
                CodeEdition.find(Integer.parseInt(edition.getValue())).orElseThrow())));
        edition.setTooltip(Controls.tip("Edition of NFPA 70 by which the site is judged"));
        row.getChildren().add(labelled("_Edition", edition));
        objective.setId("objective");
        objective.getItems().addAll(Objective.COPPER.label(), Objective.COST.label());
        objective.setOnAction(event -> echo.hear(() -> actions.objective(
                Objective.COST.label().equals(objective.getValue()) ? Objective.COST : Objective.COPPER)));
        row.getChildren().add(labelled("_Least", objective));
        change.setId("change");
        change.setTooltip(Controls.tip("This answer beside the last one on this site"));
        row.getChildren().add(change);
    }

    private Node[] switches() {
        for (Switch.What what : Switch.What.values()) {
            CheckBox box = new CheckBox("_" + what.label());
            Controls.set(box, Controls.id("may-carry", what), "", () -> echo.hear(() -> actions.turn(what)));
            boxes.put(what, box);
        }
        return boxes.values().toArray(new Node[0]);
    }

    private static HBox group(String name, Node... nodes) {
        HBox group = new HBox(10, Controls.label(name, "quiet"));
        group.setAlignment(Pos.CENTER_LEFT);
        group.getChildren().addAll(nodes);
        return group;
    }

    private static HBox labelled(String name, ComboBox<String> box) {
        Label label = Controls.label(name, "quiet");
        label.setMnemonicParsing(true);
        label.setLabelFor(box);
        HBox group = new HBox(6, label, box);
        group.setAlignment(Pos.CENTER_LEFT);
        return group;
    }

    @Override
    public Node node() {
        return row;
    }

    @Override
    public void show(Desk desk) {
        row.setDisable(desk.opened().isEmpty());
        desk.opened().ifPresent(opened -> echo.mute(() -> show(opened)));
        Optional<String> difference = Differences.findChange(desk);
        change.setText(
                difference.map(words -> "against the last answer  " + words).orElse(""));
        Controls.present(change, difference.isPresent());
    }

    private void show(Opened opened) {
        List<Switch> switches = Switch.all(opened);
        for (Switch one : switches) {
            CheckBox box = boxes.get(one.what());
            if (box != null) {
                box.setIndeterminate(one.position() == Switch.Position.MIXED);
                box.setSelected(one.position() == Switch.Position.ON);
                box.setDisable(!one.available());
                box.getTooltip().setText(one.explanation());
                box.setAccessibleHelp(one.explanation());
            }
        }
        edition.setValue(String.valueOf(opened.question().edition().year()));
        objective.setValue(opened.question().objective().label());
        boolean priced = opened.site().prices().isPresent();
        objective.setDisable(!priced);
        objective.setTooltip(Controls.tip(
                priced
                        ? "Least weight of copper, or least installed cost at the prices given"
                        : "The least cost takes prices: open a price book in the menu Site"));
    }
}
