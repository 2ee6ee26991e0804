package org.bondspan.viewer.pane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.util.Callback;

/**
 * A table of rows that may belong to something on the plan; choosing a row selects it.
 *
 * @param <R> the kind of row
 */
final class RowTable<R> {
    private static final double LEAST = 32;
    private static final double MOST = 200;
    private static final double LEAST_WORDS = 48;

    /** Kept free, so that columns stay where they are when rows become more than fit. */
    private static final double SCROLL_BAR = 15;

    /** Letters of tables and the room that they need beside them, by the style sheet. */
    private static final Font LETTERS = Font.font(12);

    private static final double BESIDE_CELL = 14;
    private static final double BESIDE_NAME = 20;

    private final TableView<R> table = new TableView<>();
    private final Function<R, Optional<String>> idOf;
    private final Echo echo = new Echo();
    private final List<TableColumn<R, ?>> elastic = new ArrayList<>();

    /** @param chosen hears the id of a row that the user goes to */
    RowTable(String id, String empty, Function<R, Optional<String>> idOf, Consumer<String> chosen) {
        this.idOf = idOf;
        table.setId(id);
        table.setPlaceholder(new Label(empty));
        table.widthProperty().addListener((property, before, width) -> share());
        table.getSelectionModel().selectedItemProperty().addListener((property, before, row) -> {
            if (row != null) {
                echo.hear(() -> idOf.apply(row).ifPresent(chosen));
            }
        });
        // A click on the row that is selected already brings its thing into view again.
        table.setRowFactory(view -> {
            TableRow<R> row = new TableRow<>();
            row.setOnMouseClicked(event -> {
                R item = row.getItem();
                if (item != null) {
                    idOf.apply(item).ifPresent(chosen);
                }
            });
            return row;
        });
    }

    TableView<R> view() {
        return table;
    }

    /** A column as wide as its contents, within reason. */
    RowTable<R> column(String name, Function<R, String> text) {
        add(name, text, Pos.CENTER_LEFT);
        return this;
    }

    /** A column of amounts, as wide as its contents. */
    RowTable<R> number(String name, Function<R, String> text) {
        add(name, text, Pos.CENTER_RIGHT);
        return this;
    }

    /** A column of words that may be cut: shares with others of its kind the room that the rest leave. */
    RowTable<R> words(String name, Function<R, String> text) {
        elastic.add(add(name, text, Pos.CENTER_LEFT));
        return this;
    }

    /** A column of whole sentences, which are broken into lines; as wide as one of words. */
    RowTable<R> prose(String name, Function<R, String> text) {
        TableColumn<R, String> column = add(name, text, Pos.CENTER_LEFT);
        column.setCellFactory(of -> new Prose<>());
        elastic.add(column);
        return this;
    }

    private TableColumn<R, String> add(String name, Function<R, String> text, Pos alignment) {
        TableColumn<R, String> column = new TableColumn<>(name);
        column.setMinWidth(LEAST);
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
        column.setCellFactory(cells(alignment));
        column.setReorderable(false);
        if (alignment == Pos.CENTER_RIGHT) {
            column.getStyleClass().add("number");
            column.setComparator(RowTable::compareNumbers);
        }
        table.getColumns().add(column);
        return column;
    }

    /** Amounts with units by size, what is no amount by letters. */
    private static int compareNumbers(String a, String b) {
        try {
            return Double.compare(value(a), value(b));
        } catch (NumberFormatException words) {
            return a.compareTo(b);
        }
    }

    private static double value(String amount) {
        return Double.parseDouble(amount.replace(",", "").replaceFirst(" .*", ""));
    }

    private Callback<TableColumn<R, String>, TableCell<R, String>> cells(Pos alignment) {
        return column -> new TableCell<>() {
            @Override
            protected void updateItem(String text, boolean empty) {
                super.updateItem(text, empty);
                setText(empty ? null : text);
                setAlignment(alignment);
                setTooltip(empty || text == null || text.length() < 6 ? null : new Tooltip(text));
            }
        };
    }

    /** Text as high as its lines: a label in a table does not know its width in time. */
    private static final class Prose<R> extends TableCell<R, String> {
        private final Text lines = new Text();

        Prose() {
            lines.getStyleClass().add("prose");
            lines.wrappingWidthProperty().bind(widthProperty().subtract(BESIDE_CELL));
        }

        @Override
        protected void updateItem(String text, boolean empty) {
            super.updateItem(text, empty);
            lines.setText(empty ? "" : text);
            setGraphic(empty ? null : lines);
        }
    }

    /** The words get what the rest leave; where that is next to nothing, the table is scrolled. */
    private void share() {
        double rest = table.getColumns().stream()
                .filter(column -> !elastic.contains(column))
                .mapToDouble(TableColumn::getPrefWidth)
                .sum();
        double share = Math.floor((table.getWidth() - SCROLL_BAR - rest) / elastic.size());
        elastic.forEach(column -> column.setPrefWidth(Math.max(LEAST_WORDS, share)));
    }

    private double contentWidth(TableColumn<R, ?> column) {
        double cells = table.getItems().stream()
                .map(row -> String.valueOf(column.getCellData(row)))
                .distinct()
                .mapToDouble(RowTable::width)
                .max()
                .orElse(0);
        return Math.min(MOST, Math.max(cells + BESIDE_CELL, width(column.getText()) + BESIDE_NAME));
    }

    private static double width(String words) {
        Text text = new Text(words);
        text.setFont(LETTERS);
        return text.getLayoutBounds().getWidth();
    }

    /** Names a column anew; it is as wide as it must be when the next rows are shown. */
    void rename(int column, String name) {
        table.getColumns().get(column).setText(name);
    }

    /** Shows other rows, nothing selected. */
    void show(List<R> rows) {
        echo.mute(() -> {
            table.getItems().setAll(rows);
            table.sort();
            table.getSelectionModel().clearSelection();
        });
        table.getColumns().stream()
                .filter(column -> !elastic.contains(column))
                .forEach(column -> column.setPrefWidth(contentWidth(column)));
        share();
    }

    /** Selects the row of that id, which comes into view; stays on a row that has that id already. */
    void select(Optional<String> id) {
        R current = table.getSelectionModel().getSelectedItem();
        if (current == null ? id.isPresent() : !id.equals(idOf.apply(current))) {
            Optional<R> row = table.getItems().stream()
                    .filter(one -> id.isPresent() && idOf.apply(one).equals(id))
                    .findFirst();
            echo.mute(() -> row.ifPresentOrElse(
                    one -> {
                        table.getSelectionModel().select(one);
                        table.scrollTo(one);
                    },
                    () -> table.getSelectionModel().clearSelection()));
        }
    }
}
