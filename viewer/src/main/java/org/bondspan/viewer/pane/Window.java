package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.SplitPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.state.Command;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Look;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.work.Bench;

/** The whole window: holds the desk, carries out commands, shows the next desk. On the JavaFX thread. */
public final class Window implements AutoCloseable {
    private final BorderPane root = new BorderPane();
    private final Bench bench;
    private final Actions actions;
    private final PlanArea plan;
    private final SchedulePane schedules;
    private final SplitPane column;
    private final SplitPane middle;
    private final List<Pane> panes = new ArrayList<>();
    private final List<Node> stops;
    private Division division = Division.USUAL;
    private Desk desk;
    private Consumer<Desk> listener = next -> {};

    /**
     * @param recent files opened lately, the newest first
     * @param quit ends the program
     */
    public Window(Palette palette, Dialogs dialogs, Supplier<List<Path>> recent, Runnable quit) {
        this.desk = Desk.empty(palette);
        this.bench = new Bench(this::take);
        this.actions = new Actions(() -> desk, this::run, bench, dialogs);
        this.plan = new PlanArea(actions, new Welcome(actions, recent));
        this.schedules = new SchedulePane(actions);
        QuestionPane question = new QuestionPane(actions);
        FactPane facts = new FactPane();
        TotalsPane totals = new TotalsPane(actions);
        HandingOn handingOn = new HandingOn(actions, plan::plan);
        MenuPane menus = new MenuPane(actions, handingOn, plan.strip(), recent, schedules::turnToCautions, quit);
        CautionLine caution = new CautionLine();
        panes.addAll(List.of(menus, caution, question, plan, facts, schedules, totals));
        HBox topRow = new HBox(menus.node(), caution.node());
        topRow.getStyleClass().add("top-row");
        topRow.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(menus.node(), Priority.ALWAYS);
        column = new SplitPane(facts.node(), schedules.node());
        column.setOrientation(Orientation.VERTICAL);
        column.setId("column");
        column.setMinWidth(280);
        middle = new SplitPane(plan.node(), column);
        middle.setId("middle");
        SplitPane.setResizableWithParent(column, false);
        root.setId("window");
        root.setTop(new VBox(topRow, question.node()));
        root.setCenter(middle);
        root.setBottom(totals.node());
        root.getStylesheets().add(Window.class.getResource("window.css").toExternalForm());
        stops = List.of(plan.plan(), facts.node(), schedules.node(), question.node());
        root.addEventFilter(KeyEvent.KEY_PRESSED, this::moveOn);
        listenForFiles();
        show();
    }

    public Parent root() {
        return root;
    }

    public Desk desk() {
        return desk;
    }

    /** Carries out a command. */
    public void run(Command command) {
        Desk next = command.on(desk);
        if (next.equals(desk)) {
            return;
        }
        boolean moved =
                next.with(next.look().withCameras(desk.look().cameras())).equals(desk);
        desk = next;
        if (moved) {
            // Panning and zooming ask for many desks a second, and nothing else changes with them.
            plan.show(desk);
        } else {
            show();
        }
    }

    private void take(Command command) {
        if (Platform.isFxApplicationThread()) {
            run(command);
        } else {
            Platform.runLater(() -> run(command));
        }
    }

    /** Opens a file for what its name says. */
    public void open(Path path) {
        actions.open(path);
    }

    /** Takes a price book for the opened site. */
    public void price(Path book) {
        actions.price(book);
    }

    /** Reviews a proposal for the opened site. */
    public void review(Path proposal) {
        actions.review(proposal);
    }

    /** Divides the window like that; its parts must have their sizes. */
    public void divide(Division next) {
        division = next;
        column.setDividerPositions(next.facts());
        placeColumn();
    }

    /** How the window is divided; with the column folded away, as it will be when it comes back. */
    public Division division() {
        boolean folded = !middle.getItems().contains(column);
        return new Division(
                folded ? division.column() : middle.getWidth() * (1 - middle.getDividerPositions()[0]),
                column.getDividerPositions()[0]);
    }

    /** Puts the keyboard on the plan. */
    public void focusPlan() {
        plan.plan().requestFocus();
    }

    /** Hears of every desk from now on. */
    public void onChange(Consumer<Desk> hearer) {
        listener = hearer;
    }

    /** Nothing is under way. */
    public boolean isIdle() {
        return desk.work().isEmpty();
    }

    /** A file, or a question, could not be used. */
    public boolean isInTrouble() {
        return desk.message()
                .filter(message -> message.tone() == Message.Tone.TROUBLE)
                .isPresent();
    }

    /** Nothing is under way and all is painted as it shall be. */
    public boolean isSettled() {
        return isIdle() && plan.isSettled();
    }

    private void show() {
        boolean dark = desk.look().palette() == Palette.DARK;
        if (dark != root.getStyleClass().contains("dark")) {
            root.getStyleClass().remove("dark");
            if (dark) {
                root.getStyleClass().add("dark");
            }
        }
        fold(desk.look().schedules() == Look.Schedules.FOLDED);
        panes.forEach(pane -> pane.show(desk));
        listener.accept(desk);
    }

    private void fold(boolean folded) {
        if (folded && middle.getItems().contains(column)) {
            division = division();
            middle.getItems().remove(column);
            plan.plan().requestFocus();
        } else if (!folded && !middle.getItems().contains(column)) {
            middle.getItems().add(column);
            placeColumn();
        }
    }

    private void placeColumn() {
        middle.setDividerPositions(Math.max(0, 1 - division.column() / Math.max(1, middle.getWidth())));
    }

    /** F6 goes from part to part, with Shift backwards. */
    private void moveOn(KeyEvent event) {
        if (event.getCode() == KeyCode.F6) {
            int now = stops.indexOf(
                    stops.stream().filter(Window::holdsFocus).findFirst().orElse(stops.get(stops.size() - 1)));
            int step = event.isShiftDown() ? stops.size() - 1 : 1;
            focus(stops.get((now + step) % stops.size()));
            event.consume();
        }
    }

    private static boolean holdsFocus(Node part) {
        Optional<Node> owner = Optional.ofNullable(part.getScene()).map(scene -> scene.getFocusOwner());
        for (Node node = owner.orElse(null); node != null; node = node.getParent()) {
            if (node == part) {
                return true;
            }
        }
        return false;
    }

    private static void focus(Node part) {
        if (part.isFocusTraversable()) {
            part.requestFocus();
        } else {
            part.lookupAll("*").stream()
                    .filter(Node::isFocusTraversable)
                    .filter(node -> !node.isDisabled())
                    .findFirst()
                    .ifPresent(Node::requestFocus);
        }
    }

    private void listenForFiles() {
        root.setOnDragOver(event -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
            event.consume();
        });
        root.setOnDragDropped(event -> {
            boolean any = event.getDragboard().hasFiles();
            if (any) {
                open(event.getDragboard().getFiles().get(0).toPath());
            }
            event.setDropCompleted(any);
            event.consume();
        });
    }

    @Override
    public void close() {
        bench.close();
    }
}
