package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.state.Desk;

/** What stands where the plan will be, until a site is opened. */
final class Welcome implements Pane {
    private final VBox box = new VBox(10);
    private final Supplier<List<Path>> recent;
    private final Actions actions;

    Welcome(Actions actions, Supplier<List<Path>> recent) {
        this.actions = actions;
        this.recent = recent;
        box.setAlignment(Pos.CENTER);
        box.getStyleClass().add("welcome");
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show(Desk desk) {
        box.getChildren()
                .setAll(
                        Controls.label("The interconnection with the least copper", "welcome-title"),
                        Controls.label("Open a site file, or drop one here.", "quiet"),
                        Controls.button(
                                "welcome-open",
                                "_Open a site\u2026",
                                "Choose a site file (Ctrl+O)",
                                actions::openSite));
        for (Path path : recent.get()) {
            Hyperlink link = new Hyperlink(String.valueOf(path.getFileName()));
            link.setTooltip(Controls.tip(path.toString()));
            link.setOnAction(event -> actions.open(path));
            box.getChildren().add(link);
        }
    }
}
