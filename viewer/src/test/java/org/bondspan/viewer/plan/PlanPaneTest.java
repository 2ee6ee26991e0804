package org.bondspan.viewer.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.sheet.plan.PlanView;
import org.bondspan.sheet.plan.Tint;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.LengthUnit;
import org.bondspan.viewer.FxRequired;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.api.FxRobotInterface;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith({FxRequired.class, ApplicationExtension.class})
class PlanPaneTest {
    private static final double WIDTH = 800;
    private static final double HEIGHT = 500;

    private final PlanPane pane = new PlanPane();
    private final List<Optional<String>> hovered = new ArrayList<>();
    private final List<PlanPoint> measured = new ArrayList<>();
    private PlanScene scene = PlanScene.of(Drawn.hall(), LengthUnit.METRE);

    @Start
    void start(Stage stage) {
        pane.onCamera(camera -> show(scene.withCamera(camera)));
        pane.onSelect(id -> show(scene.withSelected(id)));
        pane.onHover(hovered::add);
        pane.onMeasure(measured::add);
        show(scene);
        stage.setScene(new Scene(pane, WIDTH, HEIGHT));
        stage.show();
    }

    private void show(PlanScene next) {
        scene = next;
        pane.show(next);
    }

    @BeforeEach
    void settle() throws TimeoutException {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, pane.settledProperty());
    }

    private PlanView view() {
        return scene.camera().view(WIDTH, HEIGHT);
    }

    private FxRobotInterface moveTo(FxRobot robot, PlanPoint place) {
        Point2D at = view().of(place);
        return robot.moveTo(pane.localToScreen(at.getX(), at.getY()));
    }

    @Test
    void theWheelZoomsAndKeepsThePlaceUnderThePointer(FxRobot robot) {
        PlanPoint rod = Drawn.at(38, 2);
        Point2D before = view().of(rod);
        double scale = view().pointsPerNanometre();

        robot.interact(() -> pane.fireEvent(awayFromTheUser(before.getX(), before.getY())));

        assertThat(view().pointsPerNanometre()).isGreaterThan(1.5 * scale);
        assertThat(view().of(rod).distance(before)).isCloseTo(0, within(1.0));
    }

    /** Three notches of a wheel, each 40 pixels, as {@link ScrollEvent} has it. */
    private static ScrollEvent awayFromTheUser(double x, double y) {
        return new ScrollEvent(
                ScrollEvent.SCROLL,
                x,
                y,
                x,
                y,
                false,
                false,
                false,
                false,
                false,
                false,
                0,
                120,
                0,
                120,
                ScrollEvent.HorizontalTextScrollUnits.NONE,
                0,
                ScrollEvent.VerticalTextScrollUnits.NONE,
                0,
                0,
                null);
    }

    @Test
    void aDragMovesThePlanWithThePointer(FxRobot robot) {
        PlanPoint middle = Drawn.at(20, 15);
        Point2D before = view().of(middle);

        moveTo(robot, middle).press(MouseButton.PRIMARY).moveBy(60, 30).release(MouseButton.PRIMARY);

        assertThat(view().of(middle).distance(before.getX() + 60, before.getY() + 30))
                .isCloseTo(0, within(1.0));
        assertThat(scene.selected()).isEmpty();
    }

    @Test
    void aClickSelectsWhatLiesThereAndNothingWhereNothingLies(FxRobot robot) {
        moveTo(robot, Drawn.at(20, 2)).moveBy(0, 3).clickOn(MouseButton.PRIMARY);
        assertThat(scene.selected()).contains("C1");

        moveTo(robot, Drawn.at(25, 15)).clickOn(MouseButton.PRIMARY);
        assertThat(scene.selected()).isEmpty();
    }

    @Test
    void aClickOnTheWordsOfACrowdOrTheKeyOfItLooksIntoIt(FxRobot robot) throws TimeoutException {
        Drawn drawn = new Drawn().run("L1", Layer.BUILDING, LineKind.WALL, 0, 0, 400, 0, 400, 250);
        for (int i = 0; i < 5; i++) {
            drawn.run("C" + i, Layer.CONDUCTORS, LineKind.GROUNDING_ELECTRODE_CONDUCTOR, 200, 100, 201 + i, 100 + i);
        }
        PlanScene crowded = PlanScene.of(drawn.picture(), LengthUnit.METRE);
        robot.interact(() -> show(crowded));
        settle();
        Camera into = Camera.around(pane.findCrowd().orElseThrow().bounds());
        Point2D words = place(pane);
        assertThat(pane.find(words.getX(), words.getY())).isEmpty();

        robot.clickOn(pane.localToScreen(words.getX(), words.getY()));
        assertThat(scene.camera()).isEqualTo(into);

        robot.interact(() -> show(crowded));
        settle();
        robot.type(KeyCode.C);
        assertThat(scene.camera()).isEqualTo(into);
    }

    /** Some place on the words of a crowd. */
    private static Point2D place(PlanPane pane) {
        for (int y = 0; y < HEIGHT; y += 4) {
            for (int x = 0; x < WIDTH; x += 4) {
                if (pane.findCrowd(x, y).isPresent()) {
                    return new Point2D.Double(x, y);
                }
            }
        }
        throw new AssertionError("no words of a crowd");
    }

    @Test
    void thePointerTellsWhatItIsOn(FxRobot robot) {
        moveTo(robot, Drawn.at(25, 15));
        moveTo(robot, Drawn.at(38, 2));
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(hovered).contains(Optional.of("rod"));
        assertThat(pane.getAccessibleText()).contains("rod");
    }

    @Test
    void withTheMeasuringToolAClickNamesAPlace(FxRobot robot) {
        robot.interact(() -> show(scene.withTool(Tool.MEASURE)));

        moveTo(robot, Drawn.at(25, 15)).clickOn(MouseButton.PRIMARY);
        moveTo(robot, Drawn.at(38, 2)).moveBy(4, 3).clickOn(MouseButton.PRIMARY);

        double pixel = 1 / view().pointsPerNanometre();
        assertThat(measured).hasSize(2);
        assertThat((double) measured.get(0).x()).isCloseTo(25.0 * Drawn.METRE, within(pixel));
        assertThat((double) measured.get(0).y()).isCloseTo(15.0 * Drawn.METRE, within(pixel));
        assertThat(measured.get(1)).isEqualTo(Drawn.at(38, 2));
        assertThat(scene.selected()).isEmpty();
    }

    @Test
    void theKeyboardMovesZoomsAndFits(FxRobot robot) {
        robot.interact(pane::requestFocus);
        Camera whole = scene.camera();

        robot.type(KeyCode.PLUS, 2).type(KeyCode.RIGHT).type(KeyCode.UP);
        assertThat(scene.camera().width()).isLessThan(whole.width());
        assertThat(scene.camera().centreX()).isGreaterThan(whole.centreX());
        assertThat(scene.camera().centreY()).isGreaterThan(whole.centreY());

        robot.type(KeyCode.MINUS, 1);
        assertThat(scene.camera().width()).isCloseTo(whole.width() / 1.25, within(1.0));

        robot.type(KeyCode.HOME);
        assertThat(scene.camera()).isEqualTo(whole);
    }

    @Test
    void theKeyboardStepsThroughItemsAndSelects(FxRobot robot) {
        robot.interact(pane::requestFocus);

        robot.type(KeyCode.N).type(KeyCode.N).type(KeyCode.N);
        assertThat(hovered).containsExactly(Optional.of("service"), Optional.of("rod"), Optional.of("C1"));
        robot.type(KeyCode.P).type(KeyCode.ENTER);
        assertThat(scene.selected()).contains("rod");

        robot.type(KeyCode.ESCAPE);
        assertThat(scene.selected()).isEmpty();
    }

    @Test
    void aStepBringsTheItemIntoView(FxRobot robot) {
        robot.interact(() -> {
            show(scene.withCamera(scene.camera().zoomed(8, Drawn.at(2, 2))));
            pane.requestFocus();
        });
        assertThat(view().frame().contains(view().of(Drawn.at(38, 2)))).isFalse();

        robot.type(KeyCode.N, 2);

        assertThat(view().frame().contains(view().of(Drawn.at(38, 2)))).isTrue();
    }

    @Test
    void focusShows(FxRobot robot) {
        robot.interact(pane::requestFocus);
        assertThat(robot.lookup("#focus-frame").query().isVisible()).isTrue();
    }

    @Test
    void thePlanFollowsTheHandBeforeItIsPaintedAnew(FxRobot robot) {
        ImageView picture = robot.lookup("#backdrop").queryAs(ImageView.class);
        double hundredPixels = 100 / view().pointsPerNanometre();
        double[] moved = new double[3];
        robot.interact(() -> {
            show(scene.withCamera(scene.camera().moved(hundredPixels, 0)));
            pane.layout();
            moved[0] = picture.getX();
            show(scene.withCamera(scene.camera().moved(-hundredPixels, 0).zoomed(2)));
            pane.layout();
            moved[1] = picture.getX();
            moved[2] = picture.getFitWidth();
        });
        // the middle stays, so the left edge lies half a pane further left at twice the size
        assertThat(moved).containsExactly(new double[] {-100, -WIDTH / 2, 2 * WIDTH}, within(0.01));
    }

    @Test
    void showsWhatIsPainted(FxRobot robot) {
        assertThat(pixel(robot, Drawn.at(20, 2), 0)).isEqualTo(Palette.LIGHT.of(Tint.GROUNDING_ELECTRODE_CONDUCTOR));
        assertThat(pixel(robot, Drawn.at(25, 15), 0)).isEqualTo(Palette.LIGHT.of(Tint.PAPER));
    }

    @Test
    void theSelectionStandsOutInGrey(FxRobot robot) {
        double before = grey(pixel(robot, Drawn.at(20, 2), 5));
        robot.interact(() -> show(scene.withSelected(Optional.of("C1"))));
        WaitForAsyncUtils.waitForFxEvents();
        // a third of the way from black to white
        assertThat(before - grey(pixel(robot, Drawn.at(20, 2), 5))).isGreaterThan(255 / 3.0);
    }

    @Test
    void aLargePlanShowsToo(FxRobot robot) throws TimeoutException {
        robot.interact(() -> show(PlanScene.of(LargePlan.of(20_000, 7), LengthUnit.METRE)));
        WaitForAsyncUtils.waitFor(30, TimeUnit.SECONDS, pane.settledProperty());

        assertThat(grey(pixel(robot, Drawn.at(0, 60), 0))).isLessThan(128);
    }

    private Color pixel(FxRobot robot, PlanPoint place, int down) {
        Point2D at = view().of(place);
        Color[] seen = new Color[1];
        robot.interact(() -> seen[0] =
                new Color(pane.snapshot(null, null).getPixelReader().getArgb((int) at.getX(), (int) at.getY() + down)));
        return seen[0];
    }

    private static double grey(Color colour) {
        return 0.2126 * colour.getRed() + 0.7152 * colour.getGreen() + 0.0722 * colour.getBlue();
    }
}
