package org.bondspan.viewer.pane;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Message;

/** What the window says, above the plan, until it is closed. */
final class MessagePane implements Pane {
    private static final double TALLEST = 150;

    private final HBox box = new HBox(12);
    private final Label title = Controls.label("", "message-title");
    private final VBox lines = new VBox(3);
    private final ScrollPane scroll = new ScrollPane(lines);
    private Optional<Message> shown = Optional.empty();

    MessagePane(Actions actions) {
        box.setId("message");
        box.getStyleClass().add("message");
        scroll.setFitToWidth(true);
        scroll.setMaxHeight(TALLEST);
        scroll.setFocusTraversable(true);
        scroll.setAccessibleText("The message in full");
        VBox words = new VBox(4, title, scroll);
        HBox.setHgrow(words, Priority.ALWAYS);
        title.setWrapText(true);
        box.setAlignment(Pos.TOP_LEFT);
        box.getChildren()
                .addAll(
                        words,
                        Controls.button(
                                "close-message", "Cl_ose", "Close this message", () -> actions.run(Asking.hush())));
        Controls.present(box, false);
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void show(Desk desk) {
        if (desk.message().equals(shown)) {
            return;
        }
        shown = desk.message();
        Controls.present(box, shown.isPresent());
        shown.ifPresent(message -> {
            boolean trouble = message.tone() == Message.Tone.TROUBLE;
            title.setText(message.title());
            box.getStyleClass().remove("trouble");
            if (trouble) {
                box.getStyleClass().add("trouble");
            }
            lines.getChildren()
                    .setAll(message.lines().stream().map(MessagePane::line).toList());
            Controls.present(scroll, !message.lines().isEmpty());
            box.setAccessibleText(message.title() + ". " + String.join(" ", message.lines()));
        });
    }

    private static Label line(String words) {
        Label label = Controls.label(words, "message-line");
        label.setWrapText(true);
        return label;
    }
}
