package org.bondspan.viewer.app;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.bondspan.viewer.pane.Dialogs;
import org.bondspan.viewer.pane.FxDialogs;
import org.bondspan.viewer.pane.Window;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.work.Failures;

/** The program: opens the window, remembers how it stood, and does what the command line asks. */
public final class BondspanViewer extends Application {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 560;
    private static final double LEAST_HEIGHT = 380;
    private static final int BAD_INPUT = 2;

    private static int exitCode;

    /** What the program ends with once the window is closed. */
    public static int exitCode() {
        return exitCode;
    }

    @Override
    public void start(Stage stage) {
        StartOptions options = StartOptions.of(getParameters().getRaw());
        Settings settings = Settings.read(Settings.usualPlace());
        Window window = new Window(settings.palette(), new FxDialogs(stage), settings::recent, stage::close);
        // What goes wrong in the window itself is told there too, and the window goes on.
        Thread.currentThread()
                .setUncaughtExceptionHandler(
                        (thread, failure) -> window.run(Asking.say(Failures.message("That cannot be done", failure))));
        // The site is read and solved while the window is put up.
        follow(options, window, stage);
        show(window, stage, settings);
    }

    /** A window on that stage. */
    static Window open(Stage stage, Settings settings, Dialogs dialogs) {
        Window window = new Window(settings.palette(), dialogs, settings::recent, stage::close);
        show(window, stage, settings);
        return window;
    }

    private static void show(Window window, Stage stage, Settings settings) {
        stage.setScene(new Scene(window.root()));
        stage.setTitle("Bondspan");
        stage.setMinWidth(LEAST_WIDTH);
        stage.setMinHeight(LEAST_HEIGHT);
        stage.setWidth(settings.number("width").orElse(WIDTH));
        stage.setHeight(settings.number("height").orElse(HEIGHT));
        settings.number("x").filter(x -> isOnScreen(settings)).ifPresent(stage::setX);
        settings.number("y").filter(y -> isOnScreen(settings)).ifPresent(stage::setY);
        stage.setMaximized(settings.number("maximized").isPresent());
        window.onChange(new Follower(stage, settings)::follow);
        stage.setOnHidden(event -> {
            window.close();
            keep(stage, window.desk(), settings);
        });
        stage.show();
        window.focusPlan();
    }

    private static boolean isOnScreen(Settings settings) {
        double x = settings.number("x").orElse(0.0);
        double y = settings.number("y").orElse(0.0);
        return !Screen.getScreensForRectangle(x, y, LEAST_WIDTH / 2, LEAST_HEIGHT / 2)
                .isEmpty();
    }

    private static void keep(Stage stage, Desk desk, Settings settings) {
        settings.keep(desk.look().palette());
        if (stage.isMaximized()) {
            settings.keep("maximized", 1);
        } else {
            settings.forget("maximized");
            settings.keep("x", stage.getX());
            settings.keep("y", stage.getY());
            settings.keep("width", stage.getWidth());
            settings.keep("height", stage.getHeight());
        }
        settings.write();
    }

    /** One after the other: site, prices, level, proposal, picture. */
    private static void follow(StartOptions options, Window window, Stage stage) {
        List<Runnable> steps = new ArrayList<>();
        options.site().ifPresent(site -> steps.add(() -> window.open(site)));
        options.prices().ifPresent(book -> steps.add(() -> window.price(book)));
        options.level().ifPresent(level -> steps.add(() -> window.run(Looking.atLevel(level))));
        options.proposal().ifPresent(proposal -> steps.add(() -> window.review(proposal)));
        options.snapshot()
                .ifPresent(file -> steps.add(() -> Snapshot.of(stage.getScene(), file, window::isSettled, written -> {
                    exitCode = written && !window.isInTrouble() ? 0 : BAD_INPUT;
                    stage.close();
                })));
        take(steps.iterator(), window);
    }

    private static void take(Iterator<Runnable> steps, Window window) {
        if (steps.hasNext()) {
            steps.next().run();
            whenever(window::isIdle, () -> take(steps, window));
        }
    }

    private static void whenever(BooleanSupplier ready, Runnable action) {
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                if (ready.getAsBoolean()) {
                    stop();
                    action.run();
                }
            }
        }.start();
    }
}
