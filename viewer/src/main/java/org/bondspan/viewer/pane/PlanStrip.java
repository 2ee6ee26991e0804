package org.bondspan.viewer.pane;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.Separator;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.site.Level;
import org.bondspan.viewer.model.LayerNames;
import org.bondspan.viewer.plan.Labels;
import org.bondspan.viewer.plan.Tool;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Showing;

/** Above the plan: level, which plan, measuring, layers, nearer and further, light and dark. */
final class PlanStrip implements Pane {
    private static final double ROOM_FOR_ALL = 560;

    private final Actions actions;
    private final HBox row = new HBox(6);
    private final ComboBox<String> level = new ComboBox<>();
    private final Label levelName = Controls.label("_Level", "quiet");
    private final Map<Showing, ToggleButton> showings = new EnumMap<>(Showing.class);
    private final HBox showingBox = new HBox();
    private final ToggleButton pin;
    private final ToggleButton measure;
    private final MenuButton layers = new MenuButton("L_ayers");
    private final Map<Layer, CheckMenuItem> layerItems = new LinkedHashMap<>();
    private final CheckMenuItem labels;
    private final ToggleButton dark;
    private final Echo echo;

    PlanStrip(Actions actions) {
        this.actions = actions;
        this.echo = new Echo(() -> show(actions.desk()));
        row.getStyleClass().add("plan-strip");
        row.setAlignment(Pos.CENTER_LEFT);
        level.setId("level");
        level.setTooltip(Controls.tip("Level of the building (Ctrl+Page Up, Ctrl+Page Down)"));
        level.setOnAction(event -> echo.hear(() -> actions.run(Looking.atLevel(level.getValue()))));
        levelName.setMnemonicParsing(true);
        levelName.setLabelFor(level);
        addShowing(Showing.ANSWER, "Answer", "The plan of the answer (Ctrl+1)");
        addShowing(
                Showing.PROPOSAL,
                "Proposal",
                "The opened proposal with what its review found, judged by the site file as drawn (Ctrl+2)");
        addShowing(
                Showing.SIDE_BY_SIDE, "Side by side", "The pinned answer, or the proposal, beside the answer (Ctrl+3)");
        showingBox.getStyleClass().add("joined");
        showingBox.getChildren().setAll(showings.values());
        pin = Controls.toggle("pin", "_Pin", "Keep this answer to compare others with it (Ctrl+K)", this::pin);
        measure = Controls.toggle(
                "measure",
                "_Measure",
                "Measure from place to place, straight and along permitted copper (Ctrl+M)",
                this::measure);
        layers.setId("layers");
        layers.setMnemonicParsing(true);
        layers.setTooltip(Controls.tip("What the plan shows"));
        for (Layer layer : LayerNames.order()) {
            CheckMenuItem item = Controls.check(
                    Controls.id("layer", layer), LayerNames.of(layer), "", () -> actions.run(Looking.toggle(layer)));
            layerItems.put(layer, item);
        }
        labels = Controls.check("labels", "Words on the plan", "", this::labels);
        layers.getItems().setAll(layerItems.values());
        layers.getItems().add(labels);
        dark = Controls.toggle("dark", "_Dark", "Light or dark (Ctrl+D)", this::dark);
        HBox nearer = new HBox(
                6,
                new Separator(Orientation.VERTICAL),
                Controls.button("zoom-out", "\u2212", "Further off (Ctrl+Minus)", () -> zoom(0.8)),
                Controls.button("fit", "_Fit", "The whole level (Ctrl+0)", () -> actions.run(Looking.fitted())),
                Controls.button("zoom-in", "+", "Nearer (Ctrl+Plus)", () -> zoom(1.25)),
                new Separator(Orientation.VERTICAL),
                dark);
        nearer.setAlignment(Pos.CENTER_LEFT);
        // Where there is little room, what menus and keys do as well gives way.
        row.widthProperty()
                .addListener((width, before, now) -> Controls.present(nearer, now.doubleValue() > ROOM_FOR_ALL));
        row.getChildren().addAll(levelName, level, showingBox, pin, Controls.spring(), measure, layers, nearer);
    }

    private void addShowing(Showing what, String name, String tip) {
        showings.put(
                what,
                Controls.toggle(
                        Controls.id("show", what),
                        name,
                        tip,
                        () -> echo.hear(() -> actions.run(Looking.showing(what)))));
    }

    void zoom(double factor) {
        actions.run(Looking.zoomed(factor));
    }

    void pin() {
        actions.run(actions.desk().pinned().isPresent() ? Asking.unpin() : Asking.pin());
    }

    void measure() {
        boolean measuring = actions.desk().look().tool() == Tool.MEASURE;
        actions.run(Looking.with(measuring ? Tool.LOOK : Tool.MEASURE));
    }

    void labels() {
        boolean shown = actions.desk().look().labels() == Labels.SHOWN;
        actions.run(Looking.labels(shown ? Labels.HIDDEN : Labels.SHOWN));
    }

    void dark() {
        boolean light = actions.desk().look().palette() == Palette.LIGHT;
        actions.run(Looking.in(light ? Palette.DARK : Palette.LIGHT));
    }

    @Override
    public Node node() {
        return row;
    }

    @Override
    public void show(Desk desk) {
        echo.mute(() -> showLevels(desk));
        showings.forEach((what, button) -> {
            button.setSelected(desk.look().showing() == what);
            button.setDisable(!desk.has(what));
        });
        Controls.present(showingBox, desk.has(Showing.SIDE_BY_SIDE));
        pin.setSelected(desk.pinned().isPresent());
        pin.setText(desk.pinned().isPresent() ? "Un_pin" : "_Pin answer");
        pin.setDisable(desk.answer().isEmpty());
        measure.setSelected(desk.look().tool() == Tool.MEASURE);
        layerItems.forEach(
                (layer, item) -> item.setSelected(!desk.look().hidden().contains(layer)));
        labels.setSelected(desk.look().labels() == Labels.SHOWN);
        dark.setSelected(desk.look().palette() == Palette.DARK);
        row.setDisable(desk.opened().isEmpty());
    }

    private void showLevels(Desk desk) {
        List<String> ids = desk.opened()
                .map(opened -> opened.site().levels().stream().map(Level::id).toList())
                .orElse(List.of());
        if (!level.getItems().equals(ids)) {
            level.getItems().setAll(ids);
        }
        if (!ids.isEmpty()) {
            level.setValue(desk.look().level());
        }
        Controls.present(level, ids.size() > 1);
        Controls.present(levelName, ids.size() > 1);
    }
}
