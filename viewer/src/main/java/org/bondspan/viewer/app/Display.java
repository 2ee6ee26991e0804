package org.bondspan.viewer.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import javafx.scene.text.Text;

/** Whether a window can be opened. */
final class Display {
    private static final int PATIENCE_SECONDS = 30;

    private Display() {}

    /** Starts JavaFX; what is in the way, in one line, where it does not start or cannot draw text. */
    static Optional<String> obstacle() {
        if (isLinux() && System.getProperty("glass.platform") == null && isBlank(System.getenv("DISPLAY"))) {
            return Optional.of("no display: DISPLAY is not set. Start it on a desktop, or under a virtual X server.");
        }
        PrintStream err = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
        try {
            return start();
        } finally {
            System.setErr(err);
        }
    }

    private static boolean isLinux() {
        return System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
    }

    private static boolean isBlank(String variable) {
        return variable == null || variable.isBlank();
    }

    /** JavaFX prints stack traces where it fails; the caller keeps them off. */
    private static Optional<String> start() {
        CompletableFuture<Double> width = new CompletableFuture<>();
        try {
            Platform.startup(() -> measureText(width));
            return width.get(PATIENCE_SECONDS, TimeUnit.SECONDS) > 0
                    ? Optional.empty()
                    : Optional.of(advice("no font"));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of(advice("interrupted"));
        } catch (TimeoutException e) {
            return Optional.of(advice("no answer"));
        } catch (ExecutionException | RuntimeException | LinkageError e) {
            return Optional.of(advice(reason(e)));
        }
    }

    private static void measureText(CompletableFuture<Double> width) {
        try {
            width.complete(new Text("A").getLayoutBounds().getWidth());
        } catch (RuntimeException | LinkageError e) {
            width.completeExceptionally(e);
        }
    }

    private static String reason(Throwable fault) {
        Throwable deepest = fault;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        // without the list of folders in which a library was sought
        return String.valueOf(deepest.getMessage()).replaceFirst("(?s)( in java.library.path|\\R).*", "");
    }

    private static String advice(String reason) {
        String linux =
                " On Debian and Ubuntu it needs the packages libgtk-3-0 and libxtst6, and a display that answers.";
        return "JavaFX cannot open a window here (" + reason + ")." + (isLinux() ? linux : "");
    }
}
