package org.bondspan.viewer.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.bondspan.viewer.pane.Dialogs;
import org.bondspan.viewer.pane.Division;
import org.bondspan.viewer.pane.FxDialogs;
import org.bondspan.viewer.pane.Window;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.work.Failures;

/** The program: opens the window, remembers how it stood, and does what the command line asks. */
public final class BondspanViewer extends Application {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 560;
    private static final double LEAST_HEIGHT = 380;

    private static List<String> trouble = List.of();

    /** Why there is no picture of the window, line by line, once it is closed; empty where nothing went wrong. */
    static List<String> trouble() {
        return trouble;
    }

    @Override
    public void start(Stage stage) {
        StartOptions options = StartOptions.of(getParameters().getRaw());
        // A picture shows the same whoever takes it.
        Settings settings =
                options.snapshot().isPresent() ? Settings.forgetful() : Settings.read(Settings.usualPlace());
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
            keep(stage, window, settings);
        });
        stage.show();
        // Before its parts have their sizes a window cannot be divided to the pixel.
        window.root().layout();
        window.divide(new Division(
                settings.number("column").orElse(Division.USUAL.column()),
                settings.number("facts").orElse(Division.USUAL.facts())));
        window.focusPlan();
    }

    private static boolean isOnScreen(Settings settings) {
        double x = settings.number("x").orElse(0.0);
        double y = settings.number("y").orElse(0.0);
        return !Screen.getScreensForRectangle(x, y, LEAST_WIDTH / 2, LEAST_HEIGHT / 2)
                .isEmpty();
    }

    private static void keep(Stage stage, Window window, Settings settings) {
        settings.keep(window.desk().look().palette());
        settings.keep("column", window.division().column());
        settings.keep("facts", window.division().facts());
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

    /** One after the other: site, prices, level, proposal, picture; none after one that went wrong. */
    private static void follow(StartOptions options, Window window, Stage stage) {
        List<Runnable> steps = new ArrayList<>();
        options.site().ifPresent(site -> steps.add(() -> window.open(site)));
        options.prices().ifPresent(book -> steps.add(() -> window.price(book)));
        options.level().ifPresent(level -> steps.add(() -> window.run(Looking.atLevel(level))));
        options.proposal().ifPresent(proposal -> steps.add(() -> window.review(proposal)));
        if (options.snapshot().isEmpty()) {
            take(steps.iterator(), window, () -> {});
            return;
        }
        Path file = options.snapshot().get();
        steps.add(() -> Snapshot.of(stage.getScene(), file, window::isSettled, failure -> {
            trouble = failure.stream().toList();
            stage.close();
        }));
        take(steps.iterator(), window, () -> {
            trouble = window.desk().message().stream()
                    .flatMap(message -> Stream.concat(Stream.of(message.title()), message.lines().stream()))
                    .toList();
            stage.close();
        });
    }

    private static void take(Iterator<Runnable> steps, Window window, Runnable wentWrong) {
        if (window.isInTrouble()) {
            wentWrong.run();
        } else if (steps.hasNext()) {
            steps.next().run();
            whenever(window::isIdle, () -> take(steps, window, wentWrong));
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
