package org.bondspan.viewer.pane;

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
import javafx.util.Callback;

/**
 * A table of rows that may belong to something on the plan; choosing a row selects it.
 *
 * @param <R> the kind of row
 */
final class RowTable<R> {
    private final TableView<R> table = new TableView<>();
    private final Function<R, Optional<String>> idOf;
    private boolean showing;

    /** @param chosen hears the id of a row that the user goes to */
    RowTable(String id, String empty, Function<R, Optional<String>> idOf, Consumer<String> chosen) {
        this.idOf = idOf;
        table.setId(id);
        table.setPlaceholder(new Label(empty));
        table.getSelectionModel().selectedItemProperty().addListener((property, before, row) -> {
            if (!showing && row != null) {
                idOf.apply(row).ifPresent(chosen);
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

    RowTable<R> column(String name, double width, Function<R, String> text) {
        return column(name, width, text, Pos.CENTER_LEFT);
    }

    RowTable<R> number(String name, double width, Function<R, String> text) {
        return column(name, width, text, Pos.CENTER_RIGHT);
    }

    private RowTable<R> column(String name, double width, Function<R, String> text, Pos alignment) {
        TableColumn<R, String> column = new TableColumn<>(name);
        column.setPrefWidth(width);
        column.setMinWidth(Math.min(width, 44));
        column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(text.apply(cell.getValue())));
        column.setCellFactory(cells(alignment));
        column.setReorderable(false);
        if (alignment == Pos.CENTER_RIGHT) {
            column.getStyleClass().add("number");
            column.setComparator(RowTable::compareNumbers);
        }
        table.getColumns().add(column);
        return this;
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
                setTooltip(empty || text == null || text.length() < 12 ? null : new Tooltip(text));
            }
        };
    }

    /** Names a column anew, as wide as its new contents take. */
    void rename(int column, String name, double width) {
        TableColumn<R, ?> renamed = table.getColumns().get(column);
        if (!name.equals(renamed.getText())) {
            renamed.setText(name);
            renamed.setPrefWidth(width);
        }
    }

    /** Shows other rows, nothing selected. */
    void show(List<R> rows) {
        showing = true;
        table.getItems().setAll(rows);
        table.sort();
        table.getSelectionModel().clearSelection();
        showing = false;
    }

    /** Selects the row of that id, which comes into view; stays on a row that has that id already. */
    void select(Optional<String> id) {
        showing = true;
        R current = table.getSelectionModel().getSelectedItem();
        if (current == null ? id.isPresent() : !id.equals(idOf.apply(current))) {
            Optional<R> row = table.getItems().stream()
                    .filter(one -> id.isPresent() && idOf.apply(one).equals(id))
                    .findFirst();
            row.ifPresentOrElse(
                    one -> {
                        table.getSelectionModel().select(one);
                        table.scrollTo(one);
                    },
                    () -> table.getSelectionModel().clearSelection());
        }
        showing = false;
    }
}
