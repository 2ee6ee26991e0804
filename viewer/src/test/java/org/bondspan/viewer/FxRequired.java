package org.bondspan.viewer;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Skips tests of the window where JavaFX cannot draw text, and says so once in one line. List it before TestFX's own
 * extension, which starts JavaFX. {@code -Dui.tests=require} fails them instead, {@code -Dui.tests=off} skips them
 * anyway.
 */
public final class FxRequired implements ExecutionCondition {
    private static final String ADVICE = " On Debian and Ubuntu: apt-get install libpangoft2-1.0-0 fonts-dejavu-core";
    private static final long PATIENCE = TimeUnit.SECONDS.toMillis(30);

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        String wanted = System.getProperty("ui.tests", "auto");
        if (wanted.equals("off")) {
            return ConditionEvaluationResult.disabled("-Dui.tests=off");
        }
        Optional<String> obstacle = Known.OBSTACLE;
        if (obstacle.isEmpty()) {
            return ConditionEvaluationResult.enabled("JavaFX draws text");
        }
        if (wanted.equals("require")) {
            throw new IllegalStateException("-Dui.tests=require, but " + obstacle.get() + ADVICE);
        }
        return ConditionEvaluationResult.disabled(obstacle.get());
    }

    /**
     * Asked once in a Java machine; what runs on the JavaFX thread stays outside, as this class is not yet ready then.
     */
    private static final class Known {
        static final Optional<String> OBSTACLE = ask();

        private static Optional<String> ask() {
            Optional<String> obstacle = probe();
            obstacle.ifPresent(reason -> System.out.println("TESTS OF THE WINDOW CANNOT RUN: " + reason + ADVICE));
            return obstacle;
        }
    }

    private static Optional<String> probe() {
        PrintStream err = System.err;
        // JavaFX prints a stack trace for each library that it lacks
        System.setErr(new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
        try {
            FxToolkit.registerPrimaryStage();
            double width = WaitForAsyncUtils.waitForAsyncFx(PATIENCE, FxRequired::widthOfText);
            return width > 0 ? Optional.empty() : Optional.of("JavaFX found no font.");
        } catch (Exception | LinkageError e) {
            return Optional.of("JavaFX cannot draw text here (" + reason(e) + ").");
        } finally {
            System.setErr(err);
        }
    }

    private static double widthOfText() {
        return new Text("Ag").getLayoutBounds().getWidth();
    }

    private static String reason(Throwable fault) {
        Throwable deepest = fault;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        // without the list of folders in which the library was sought
        return deepest.toString().replaceFirst("(?s)( in java.library.path|\\R).*", "");
    }
}
