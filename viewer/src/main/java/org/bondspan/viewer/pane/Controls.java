package org.bondspan.viewer.pane;

import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** Controls as all panes make them: with an id, a mnemonic and a tooltip. */
final class Controls {
    private Controls() {}

    /** {@code show-side-by-side}. */
    static String id(String what, Enum<?> which) {
        return what + "-" + which.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Button button(String id, String text, String tip, Runnable action) {
        return set(new Button(text), id, tip, action);
    }

    static ToggleButton toggle(String id, String text, String tip, Runnable action) {
        return set(new ToggleButton(text), id, tip, action);
    }

    static <T extends ButtonBase> T set(T button, String id, String tip, Runnable action) {
        button.setId(id);
        button.setMnemonicParsing(true);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(tip(tip));
        button.setAccessibleHelp(tip);
        button.setOnAction(event -> action.run());
        return button;
    }

    static Tooltip tip(String words) {
        Tooltip tooltip = new Tooltip(words);
        tooltip.setShowDelay(Duration.millis(500));
        tooltip.setWrapText(true);
        tooltip.setMaxWidth(360);
        return tooltip;
    }

    static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        return label;
    }

    static MenuItem item(String id, String text, String keys, Runnable action) {
        return set(new MenuItem(text), id, keys, action);
    }

    static CheckMenuItem check(String id, String text, String keys, Runnable action) {
        return set(new CheckMenuItem(text), id, keys, action);
    }

    static RadioMenuItem radio(String id, String text, String keys, Runnable action) {
        return set(new RadioMenuItem(text), id, keys, action);
    }

    private static <T extends MenuItem> T set(T item, String id, String keys, Runnable action) {
        item.setId(id);
        item.setMnemonicParsing(true);
        if (!keys.isEmpty()) {
            item.setAccelerator(KeyCombination.valueOf(keys));
        }
        item.setOnAction(event -> action.run());
        return item;
    }

    /** Takes what room is left. */
    static Region spring() {
        Region region = new Region();
        HBox.setHgrow(region, Priority.ALWAYS);
        return region;
    }

    /** Shows a node and gives it room, or neither. */
    static void present(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }
}
