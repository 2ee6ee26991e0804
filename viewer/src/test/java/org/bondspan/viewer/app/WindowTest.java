package org.bondspan.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.geometry.Bounds;
import javafx.geometry.VerticalDirection;
import javafx.print.Printer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.FxRequired;
import org.bondspan.viewer.Sitting;
import org.bondspan.viewer.model.ConductorRow;
import org.bondspan.viewer.model.FindingRow;
import org.bondspan.viewer.model.Scenes;
import org.bondspan.viewer.pane.Dialogs;
import org.bondspan.viewer.pane.Division;
import org.bondspan.viewer.pane.Window;
import org.bondspan.viewer.plan.PlanPane;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Showing;
import org.bondspan.viewer.work.ManyRods;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith({FxRequired.class, ApplicationExtension.class})
class WindowTest {
    private static final int PATIENCE_IN_SECONDS = 60;

    @TempDir
    Path directory;

    private Window window;
    private Stage stage;
    private Settings settings;
    private final Chosen chosen = new Chosen();

    /** On a stage of its own: what that is set to would stay with the next test otherwise. */
    @BeforeEach
    void start() {
        settings = Settings.read(directory.resolve("viewer.properties"));
        stage = onWindowThread(() -> new Stage());
        window = onWindowThread(() -> BondspanViewer.open(stage, settings, chosen));
    }

    @AfterEach
    void close(FxRobot robot) {
        robot.interact(() -> stage.hide());
    }

    @Test
    void opensASiteShowsItSolvedAndRemembersIt(FxRobot robot) {
        open(robot, "hall-timber.site.json");

        assertThat(text(robot, "#verdict")).isEqualTo("Least copper, proven");
        assertThat(text(robot, "#caution")).contains("licensed professional");
        assertThat(stage.getTitle()).startsWith("Quillmarsh Depot, hall A");
        assertThat(conductors(robot).getItems()).hasSize(7);
        // 538.98 lb: worked by hand in TotalsTest
        assertThat(robot.lookup("#totals .label").queryAllAs(Label.class))
                .extracting(Labeled::getText)
                .contains("538.98 lb");
        assertThat(settings.recent())
                .containsExactly(Sitting.sample("hall-timber.site.json").toAbsolutePath());
    }

    @Test
    void selectingInTheTableSelectsOnThePlanAndBringsItIntoView(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        robot.clickOn("#zoom-in").clickOn("#zoom-in").clickOn("#zoom-in").clickOn("#zoom-in");
        clickRow(robot, "rod-2");
        settle();

        assertThat(desk().look().selected()).contains("C7");
        assertThat(text(robot, "#fact-title")).isEqualTo("C7  6 AWG");
        // Rod 2 stands at (-5, 24): what is seen now holds it, though the middle of the hall was seen before.
        var camera = desk().look().camera().orElseThrow();
        double foot = 304_800_000.0;
        assertThat(Math.abs(camera.centreX() / foot + 5)).isLessThan(camera.width() / foot / 2);
        assertThat(Math.abs(camera.centreY() / foot - 24)).isLessThan(camera.height() / foot / 2);
    }

    @Test
    void selectingOnThePlanSelectsInTheTable(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        PlanPane plan = robot.lookup("#plan").queryAs(PlanPane.class);
        // C2 runs along x = 5 ft from y = 6 to y = 380: half way up it is alone.
        var view =
                desk().look().camera().orElseGet(() -> Scenes.fitted(desk())).view(plan.getWidth(), plan.getHeight());
        var at = view.of(new PlanPoint(5 * 304_800_000L, 200 * 304_800_000L));
        var onScreen = plan.localToScreen(at.getX(), at.getY());
        robot.moveTo(onScreen.getX(), onScreen.getY());
        await("the facts under the pointer", () -> text(robot, "#foot").contains("1,028.00 ft"));
        robot.clickOn(onScreen.getX(), onScreen.getY());
        settle();

        assertThat(desk().look().selected()).contains("C2");
        assertThat(conductors(robot).getSelectionModel().getSelectedItem().id()).isEqualTo("C2");
        assertThat(text(robot, "#fact-title")).isEqualTo("C2  3/0 AWG");
    }

    /** By hand in {@code DifferencesTest}. */
    @Test
    void forbiddingTheFrameChangesTheWeightAndSaysByHowMuch(FxRobot robot) {
        open(robot, "hall-steel.site.json");
        robot.clickOn("#may-carry-frame");
        settle();

        assertThat(text(robot, "#change")).isEqualTo("against the last answer  +520.56 lb  +1,010.00 ft");
        robot.clickOn("#may-carry-frame");
        settle();
        assertThat(text(robot, "#change")).contains("\u2212520.56 lb");
    }

    @Test
    void aPinnedAnswerStandsBesideTheNextWithLinkedViewsAndOnPaper(FxRobot robot) throws IOException {
        open(robot, "hall-steel.site.json");
        robot.clickOn("#pin").clickOn("#may-carry-frame");
        settle();
        robot.clickOn("#show-side-by-side");
        settle();

        assertThat(text(robot, "#plan-title")).startsWith("Pinned: 19.98 lb");
        assertThat(text(robot, "#second-plan-title")).startsWith("Answer: 540.54 lb");
        assertThat(robot.lookup("#differences").queryTableView().getItems()).isNotEmpty();
        export(robot, "menu-svg", "both.svg", "<".getBytes(StandardCharsets.UTF_8));
        assertThat(Files.readString(directory.resolve("both.svg")))
                .contains("Pinned: Least copper, proven: weight 19.98 lb")
                .contains("Answer: Least copper, proven: weight 540.54 lb")
                .contains("supposed: hall-frame may not carry");
        var before = desk().look().camera();
        robot.moveTo("#second-plan").scroll(3, VerticalDirection.UP);
        settle();
        assertThat(desk().look().camera()).isNotEqualTo(before);
        assertThat(Scenes.of(desk()))
                .extracting(titled -> titled.scene().camera())
                .containsOnly(desk().look().camera().orElseThrow());
    }

    @Test
    void findingsOfAFaultyProposalStandInTheListAndOnThePlan(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        review(robot, "hall-timber.faulty.proposal.json");

        ListView<FindingRow> list = robot.lookup("#findings").queryListView();
        assertThat(list.getItems()).hasSize(10);
        assertThat(text(robot, "#verdict")).isEqualTo("Violates, 9 violations to mend");
        assertThat(Optional.ofNullable(desk().review().orElseThrow().pictures().get("L1"))
                        .orElseThrow()
                        .notes())
                .filteredOn(note -> note.kind() == Note.Kind.KEYNOTE)
                .hasSize(10);
        FindingRow rebar = list.getItems().stream()
                .filter(row -> row.subject().equals("perimeter-footing"))
                .findFirst()
                .orElseThrow();
        robot.interact(() -> list.getSelectionModel().select(rebar));
        settle();
        assertThat(desk().look().selected()).contains("perimeter-footing");
        assertThat(text(robot, "#fact-title")).isEqualTo("perimeter-footing");
    }

    @Test
    void aWrongFileIsToldInTheWindowAndTheWindowGoesOn(FxRobot robot) throws IOException {
        open(robot, "hall-timber.site.json");
        Path wrong = Files.writeString(directory.resolve("wrong.site.json"), "{\n  \"format\": \"bondspan-site/9\"\n}");
        chosen.file = Optional.of(wrong);
        robot.press(KeyCode.CONTROL, KeyCode.O).release(KeyCode.O, KeyCode.CONTROL);
        settle();

        assertThat(robot.lookup("#message").query().isVisible()).isTrue();
        assertThat(robot.lookup("#message .label").queryAllAs(Label.class))
                .extracting(Labeled::getText)
                .anyMatch(line -> line.startsWith("Line 2, format: "));
        assertThat(desk().answer()).isPresent();
        robot.clickOn("#close-message");
        assertThat(robot.lookup("#message").query().isVisible()).isFalse();
        clickRow(robot, "rod-2");
        assertThat(desk().look().selected()).contains("C7");
    }

    @Test
    void aLongSearchShowsHowItGoesAndStops(FxRobot robot) throws IOException {
        Path large = Files.writeString(directory.resolve("large.site.json"), ManyRods.site(70));
        robot.interact(() -> window.open(large));
        await("progress with its gap", () -> text(robot, "#progress").contains("gap"));
        // The plan as drawn is there meanwhile, and the window answers.
        assertThat(desk().plan()).isPresent();
        robot.clickOn("#fit").clickOn("#stop");
        settle();

        assertThat(desk().answer()).isPresent();
        assertThat(robot.lookup("#work").query().isVisible()).isFalse();
    }

    @Test
    void everythingIsDoneByKeyboard(FxRobot robot) {
        chosen.file = Optional.of(Sitting.sample("plant-block.site.json"));
        robot.press(KeyCode.CONTROL, KeyCode.O).release(KeyCode.O, KeyCode.CONTROL);
        settle();
        robot.press(KeyCode.CONTROL, KeyCode.PAGE_UP).release(KeyCode.PAGE_UP, KeyCode.CONTROL);
        assertThat(desk().look().level()).isEqualTo("upper");

        robot.type(KeyCode.N).type(KeyCode.ENTER);
        await("a thing selected", () -> desk().look().selected().isPresent());

        robot.type(KeyCode.F6).type(KeyCode.F6);
        await("the schedules have the keyboard", () -> holdsFocus("#schedules"));
        robot.type(KeyCode.F6);
        await(
                "the question has the keyboard",
                () -> robot.lookup("#may-carry-supervision").query().isFocused());
        robot.type(KeyCode.TAB);
        assertThat(robot.lookup("#may-carry-ring").query().isFocused()).isTrue();
        robot.press(KeyCode.CONTROL, KeyCode.K).release(KeyCode.K, KeyCode.CONTROL);
        robot.type(KeyCode.SPACE);
        settle();
        // Without the ring to carry, the way to the water pipe is of copper.
        assertThat(text(robot, "#change")).startsWith("against the last answer  +");

        robot.press(KeyCode.CONTROL, KeyCode.DIGIT3).release(KeyCode.DIGIT3, KeyCode.CONTROL);
        assertThat(desk().look().showing()).isEqualTo(Showing.SIDE_BY_SIDE);
        robot.press(KeyCode.CONTROL, KeyCode.D).release(KeyCode.D, KeyCode.CONTROL);
        assertThat(desk().look().palette()).isEqualTo(Palette.DARK);
        robot.type(KeyCode.F1);
        assertThat(desk().message()).isPresent();
    }

    @Test
    void whatIsSeenIsWrittenAsPngSvgAndPdf(FxRobot robot) throws IOException {
        open(robot, "hall-steel.site.json");
        export(robot, "menu-png", "seen.png", new byte[] {(byte) 0x89, 'P', 'N', 'G'});
        export(robot, "menu-svg", "seen.svg", "<".getBytes(StandardCharsets.UTF_8));
        export(robot, "menu-pdf", "seen.pdf", "%PDF".getBytes(StandardCharsets.UTF_8));
        assertThat(Files.readString(directory.resolve("seen.svg")))
                .contains("19.98 lb")
                .contains("Quillmarsh Depot");
    }

    @Test
    void printingWithoutAPrinterSaysSo(FxRobot robot) {
        open(robot, "hall-steel.site.json");
        robot.press(KeyCode.CONTROL, KeyCode.P).release(KeyCode.P, KeyCode.CONTROL);
        settle();

        if (Printer.getAllPrinters().isEmpty()) {
            assertThat(desk().message().orElseThrow().title()).isEqualTo("There is no printer");
        }
    }

    @Test
    void theWindowComesBackAsItWas(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        robot.interact(() -> {
            stage.setWidth(1100);
            stage.setHeight(700);
        });
        robot.clickOn("#dark");
        robot.interact(() -> stage.hide());

        Settings next = Settings.read(directory.resolve("viewer.properties"));
        assertThat(next.number("width")).contains(1100.0);
        assertThat(next.number("height")).contains(700.0);
        assertThat(next.palette()).isEqualTo(Palette.DARK);
    }

    @Test
    void theWindowIsDividedAsItWasAlsoWithTheSchedulesFoldedAway(FxRobot robot) {
        Division usual = window.division();
        robot.interact(() -> {
            robot.lookup("#middle").queryAs(SplitPane.class).setDividerPositions(0.55);
            robot.lookup("#column").queryAs(SplitPane.class).setDividerPositions(0.3);
        });
        Division moved = window.division();
        assertThat(moved.column()).isGreaterThan(usual.column() + 50);

        robot.type(KeyCode.F9);
        robot.interact(() -> stage.hide());
        stage = onWindowThread(() -> new Stage());
        window = onWindowThread(
                () -> BondspanViewer.open(stage, Settings.read(directory.resolve("viewer.properties")), chosen));
        WaitForAsyncUtils.waitForFxEvents();

        // A divider stands on whole pixels.
        assertThat(window.division().column()).isCloseTo(moved.column(), within(2.0));
        assertThat(window.division().facts()).isCloseTo(moved.facts(), within(0.005));
        assertThat(robot.lookup("#column").query().getBoundsInLocal().getWidth())
                .isCloseTo(moved.column(), within(5.0));
    }

    /** 1280 by 800 is the size of a window that nobody has used yet. */
    @Test
    void theScheduleOfConductorsFitsBesideThePlan(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        allColumnsAreInViewWithTheirContents(robot);
        review(robot, "hall-timber.faulty.proposal.json");
        robot.interact(() -> robot.lookup("#schedules")
                .queryAs(TabPane.class)
                .getSelectionModel()
                .select(0));
        settle();
        allColumnsAreInViewWithTheirContents(robot);
    }

    @Test
    void whyMetalMayNotCarryIsReadInFullInTheSchedule(FxRobot robot) {
        open(robot, "hall-timber.site.json");
        robot.interact(() -> {
            TabPane schedules = robot.lookup("#schedules").queryAs(TabPane.class);
            schedules.getSelectionModel().select(3);
        });
        settle();

        TableView<?> metal = robot.lookup("#metal").queryTableView();
        assertThat(robot.from(metal).lookup(".prose").queryAllAs(Text.class))
                .filteredOn(prose -> prose.getText().startsWith("Footing rebar"))
                .singleElement()
                .satisfies(prose -> {
                    assertThat(prose.getText()).endsWith("250.53(C), 250.68(C)(3)");
                    Bounds cell = prose.getParent().getBoundsInLocal();
                    assertThat(prose.getBoundsInParent().getHeight()).isBetween(24.0, cell.getHeight());
                    assertThat(prose.getBoundsInParent().getMaxX()).isLessThanOrEqualTo(cell.getWidth());
                });
        assertThat(metal.getColumns().stream()
                        .mapToDouble(TableColumn::getWidth)
                        .sum())
                .isLessThan(metal.getWidth());
    }

    /** Words of ends alone may be cut; the facts say them in full. */
    private void allColumnsAreInViewWithTheirContents(FxRobot robot) {
        TableView<ConductorRow> table = conductors(robot);
        assertThat(stage.getWidth()).isEqualTo(1280);
        assertThat(table.getColumns().stream()
                        .mapToDouble(TableColumn::getWidth)
                        .sum())
                .isLessThan(table.getWidth());
        assertThat(robot.from(table).lookup(".table-cell").queryAllAs(TableCell.class))
                .filteredOn(cell -> cell.getText() != null)
                .filteredOn(cell ->
                        !List.of("to", "from").contains(cell.getTableColumn().getText()))
                .isNotEmpty()
                .allSatisfy(cell -> assertThat(seen(cell)).isEqualTo(cell.getText()));
        assertThat(robot.from(table).lookup(".column-header .label").queryAllAs(Label.class))
                .filteredOn(name -> !name.getText().isEmpty())
                .allSatisfy(name -> assertThat(seen(name)).isEqualTo(name.getText()));
    }

    /** What is left of its words where they are cut. */
    private static String seen(Labeled control) {
        return ((Text) control.lookup(".text")).getText();
    }

    private static <T> T onWindowThread(Callable<T> work) {
        return WaitForAsyncUtils.waitForAsyncFx(TimeUnit.SECONDS.toMillis(PATIENCE_IN_SECONDS), work);
    }

    private void export(FxRobot robot, String item, String name, byte[] beginning) throws IOException {
        Path file = directory.resolve(name);
        chosen.file = Optional.of(file);
        robot.interact(() -> item(robot.lookup("#menus").queryAs(MenuBar.class).getMenus(), item)
                .orElseThrow()
                .fire());
        await(name, () -> Files.exists(file) && window.isIdle());
        assertThat(Files.readAllBytes(file)).startsWith(beginning);
    }

    private static Optional<MenuItem> item(List<? extends MenuItem> items, String id) {
        for (MenuItem item : items) {
            Optional<MenuItem> found = id.equals(item.getId())
                    ? Optional.of(item)
                    : item instanceof Menu menu ? item(menu.getItems(), id) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The conductor that ends there. */
    private static void clickRow(FxRobot robot, String to) {
        robot.clickOn(robot.from(conductors(robot)).lookup(to).<Node>query());
    }

    private void open(FxRobot robot, String name) {
        robot.interact(() -> window.open(Sitting.sample(name)));
        settle();
    }

    private void review(FxRobot robot, String name) {
        robot.interact(() -> window.review(Sitting.sample(name)));
        settle();
    }

    private Desk desk() {
        WaitForAsyncUtils.waitForFxEvents();
        return window.desk();
    }

    private void settle() {
        WaitForAsyncUtils.waitForFxEvents();
        await("rest", window::isSettled);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void await(String what, Callable<Boolean> condition) {
        try {
            WaitForAsyncUtils.waitFor(PATIENCE_IN_SECONDS, TimeUnit.SECONDS, condition);
        } catch (TimeoutException e) {
            throw new AssertionError("no " + what + " in " + PATIENCE_IN_SECONDS + " s", e);
        }
    }

    private boolean holdsFocus(String part) {
        Node owner = stage.getScene().getFocusOwner();
        Node wanted = stage.getScene().lookup(part);
        for (Node node = owner; node != null; node = node.getParent()) {
            if (node == wanted) {
                return true;
            }
        }
        return false;
    }

    private static String text(FxRobot robot, String label) {
        return robot.lookup(label).queryAs(Labeled.class).getText();
    }

    private static TableView<ConductorRow> conductors(FxRobot robot) {
        return robot.lookup("#conductors").queryTableView();
    }

    /** Answers in place of the user. */
    private static final class Chosen implements Dialogs {
        private Optional<Path> file = Optional.empty();

        @Override
        public Optional<Path> open(Kind kind) {
            return file;
        }

        @Override
        public Optional<Path> save(Kind kind, String name) {
            return file;
        }

        @Override
        public Optional<Path> directory(String title) {
            return file;
        }

        @Override
        public boolean confirm(String question, String yes) {
            return false;
        }
    }
}
