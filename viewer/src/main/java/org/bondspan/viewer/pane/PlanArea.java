package org.bondspan.viewer.pane;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.model.FactSheet;
import org.bondspan.viewer.model.FactSheets;
import org.bondspan.viewer.model.Measurement;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.plan.PlanPane;
import org.bondspan.viewer.plan.Tool;
import org.bondspan.viewer.state.Desk;

/** The plan, or two side by side, with the strip and messages above and what lies under the pointer below. */
final class PlanArea implements Pane {
    private static final int HOVERED_FACTS = 8;
    private static final double ROOM_FOR_HINTS = 400;
    private static final double FOOT = 44;
    private static final String HINT = "Point at anything to read about it. Wheel: nearer and further. Drag: move."
            + " N: the next thing. Enter: select. F1: all keys.";

    private final BorderPane area = new BorderPane();
    private final Actions actions;
    private final PlanStrip strip;
    private final MessagePane message;
    private final Welcome welcome;
    private final SheetView first;
    private final SheetView second;
    private final SplitPane sheets = new SplitPane();
    private final Label foot = Controls.label("", "foot");
    private Optional<String> hovered = Optional.empty();

    PlanArea(Actions actions, Welcome welcome) {
        this.actions = actions;
        this.strip = new PlanStrip(actions);
        this.message = new MessagePane(actions);
        this.welcome = welcome;
        this.first = new SheetView("plan", actions, this::hover);
        this.second = new SheetView("second-plan", actions, this::hover);
        sheets.setOrientation(Orientation.HORIZONTAL);
        sheets.getStyleClass().add("sheets");
        foot.setId("foot");
        foot.setWrapText(true);
        foot.setMaxWidth(Double.MAX_VALUE);
        setFootHeight(FOOT);
        area.heightProperty()
                .addListener(
                        (height, before, now) -> setFootHeight(now.doubleValue() < ROOM_FOR_HINTS ? FOOT / 2 : FOOT));
        area.setTop(new VBox(strip.node(), message.node()));
        area.setBottom(foot);
        area.setMinWidth(300);
        sheets.getItems().setAll(first);
        sheets.setVisible(false);
        area.setCenter(new StackPane(sheets, welcome.node()));
    }

    @Override
    public Node node() {
        return area;
    }

    PlanStrip strip() {
        return strip;
    }

    PlanPane plan() {
        return first.plan();
    }

    /** All plans shown are painted as they shall be. */
    boolean isSettled() {
        return !sheets.isVisible()
                || sheets.getItems().stream()
                        .allMatch(node -> node instanceof SheetView view
                                && view.plan().settledProperty().get());
    }

    @Override
    public void show(Desk desk) {
        strip.show(desk);
        message.show(desk);
        List<Scenes.Titled> scenes = Scenes.of(desk);
        if (scenes.isEmpty()) {
            welcome.show(desk);
        } else {
            show(scenes);
        }
        showFoot(desk);
    }

    private void show(List<Scenes.Titled> scenes) {
        List<SheetView> views = List.of(first, second).subList(0, scenes.size());
        if (!sheets.getItems().equals(views)) {
            sheets.getItems().setAll(views);
        }
        for (int i = 0; i < scenes.size(); i++) {
            views.get(i).show(scenes.get(i), scenes.size() > 1);
        }
        if (!sheets.isVisible()) {
            sheets.setVisible(true);
            first.plan().requestFocus();
            welcome.node().setVisible(false);
        }
    }

    private void hover(Optional<String> id) {
        hovered = id;
        showFoot(actions.desk());
    }

    /** The same whatever it says, so that the plan above it stays where it is. */
    private void setFootHeight(double height) {
        foot.setMinHeight(height);
        foot.setPrefHeight(height);
        foot.setMaxHeight(height);
    }

    private void showFoot(Desk desk) {
        Optional<String> words = desk.look().tool() == Tool.MEASURE
                ? Measurement.find(desk).or(() -> Optional.of("Choose the first place"))
                : hovered.flatMap(id -> FactSheets.find(desk, id)).map(sheet -> line(sheet));
        foot.setText(words.orElse(desk.opened().isEmpty() || foot.getMinHeight() < FOOT ? "" : HINT));
    }

    private static String line(FactSheet sheet) {
        return sheet.line(HOVERED_FACTS);
    }
}
