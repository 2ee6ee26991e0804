package org.bondspan.viewer.pane;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.bondspan.viewer.model.FindingRow;

/** The findings with the numbers that they have on the plan. */
final class FindingList {
    private final ListView<FindingRow> list = new ListView<>();
    private final Echo echo = new Echo();

    FindingList(Consumer<String> chosen) {
        list.setId("findings");
        list.setPlaceholder(new Label("No findings"));
        list.setCellFactory(view -> new Cell());
        list.getSelectionModel().selectedItemProperty().addListener((property, before, row) -> {
            if (row != null) {
                echo.hear(() -> chosen.accept(row.subject()));
            }
        });
    }

    ListView<FindingRow> view() {
        return list;
    }

    /** Shows other findings, none selected. */
    void show(List<FindingRow> rows) {
        echo.mute(() -> {
            list.getItems().setAll(rows);
            list.getSelectionModel().clearSelection();
        });
    }

    /** Selects the first finding about that; stays on one that is about it already. */
    void select(Optional<String> subject) {
        FindingRow current = list.getSelectionModel().getSelectedItem();
        if (current == null ? subject.isPresent() : !subject.equals(Optional.of(current.subject()))) {
            Optional<FindingRow> row = list.getItems().stream()
                    .filter(one -> subject.equals(Optional.of(one.subject())))
                    .findFirst();
            echo.mute(() -> row.ifPresentOrElse(
                    one -> {
                        list.getSelectionModel().select(one);
                        list.scrollTo(one);
                    },
                    () -> list.getSelectionModel().clearSelection()));
        }
    }

    /** Number, how grave, section, subject; below it the message, wrapped to the width of the list. */
    private static final class Cell extends ListCell<FindingRow> {
        private final Label number = Controls.label("", "keynote");
        private final Label head = Controls.label("", "finding-head");
        private final Label message = Controls.label("", "finding-message");
        private final HBox box;

        Cell() {
            message.setWrapText(true);
            VBox words = new VBox(1, head, message);
            HBox.setHgrow(words, Priority.ALWAYS);
            box = new HBox(8, number, words);
            box.setMaxWidth(USE_PREF_SIZE);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(FindingRow row, boolean empty) {
            super.updateItem(row, empty);
            setText(null);
            if (empty || row == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            String grave = row.severity().label();
            number.setText(String.valueOf(row.number()));
            number.getStyleClass().setAll("label", "keynote", grave);
            head.setText(grave.toUpperCase(Locale.ROOT) + "  " + row.rule() + "  " + row.subject());
            head.getStyleClass().setAll("label", "finding-head", grave);
            message.setText(row.message());
            box.prefWidthProperty().bind(widthProperty().subtract(20));
            setGraphic(box);
            setAccessibleText(row.number() + ", " + head.getText() + ": " + row.message());
        }
    }
}
