package org.bondspan.viewer.plan;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.ImageView;
import javafx.stage.Stage;
import org.bondspan.units.LengthUnit;

/**
 * Pans a large plan in a window for some seconds: frames a second, redraws of the plan a second, and how long the
 * thread of the window worked on the plan in a frame.
 */
final class PaneBenchmark {
    private static final int SEGMENTS = 50_000;
    private static final double WIDTH = 1200;
    private static final double HEIGHT = 760;
    private static final double SECONDS = 4;

    private final PlanPane pane = new PlanPane();
    private final PlanScene scene = PlanScene.of(LargePlan.of(SEGMENTS, 7), LengthUnit.METRE);

    /** Ends the process. */
    public static void main(String[] arguments) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.startup(() -> new PaneBenchmark().start(done));
        done.await();
        System.exit(0);
    }

    private void start(CountDownLatch done) {
        Stage stage = new Stage();
        stage.setScene(new Scene(pane, WIDTH, HEIGHT));
        stage.show();
        pane.show(scene);
        Camera whole = scene.camera();
        Camera near = whole.zoomed(8);
        DoubleFunction<Camera> far = share -> whole.moved(0.1 * Math.sin(9 * share) * whole.width(), 0);
        DoubleFunction<Camera> close = share -> near.moved(2 * Math.sin(9 * share) * near.width(), 0);
        run(List.<Consumer<Runnable>>of(
                        next -> pan("warming up", far, next),
                        next -> pan("all in view", far, next),
                        next -> pan("warming up", close, next),
                        next -> pan("zoomed in 8x", close, next),
                        next -> done.countDown())
                .iterator());
    }

    private void run(Iterator<Consumer<Runnable>> steps) {
        whenSettled(() -> steps.next().accept(() -> run(steps)));
    }

    private void whenSettled(Runnable next) {
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                if (pane.settledProperty().get()) {
                    stop();
                    next.run();
                }
            }
        }.start();
    }

    private void pan(String what, DoubleFunction<Camera> path, Runnable next) {
        ImageView picture = (ImageView) pane.lookup("#backdrop");
        List<Double> worked = new ArrayList<>();
        int[] redraws = {0};
        double before = paintingMillis();
        picture.imageProperty().addListener(change -> redraws[0]++);
        new AnimationTimer() {
            private final long begin = System.nanoTime();

            @Override
            public void handle(long now) {
                long start = System.nanoTime();
                double share = (start - begin) / 1e9 / SECONDS;
                pane.show(scene.withCamera(path.apply(share)));
                pane.layout();
                worked.add((System.nanoTime() - start) / 1e6);
                if (share >= 1) {
                    stop();
                    report(what, worked, redraws[0], (paintingMillis() - before) / redraws[0]);
                    next.run();
                }
            }
        }.start();
    }

    private static void report(String what, List<Double> worked, int redraws, double painting) {
        Collections.sort(worked);
        System.out.printf(
                Locale.ROOT,
                "%-14s %4.0f frames, %4.0f redraws a second, each %5.1f ms of a processor;"
                        + " window's thread %5.2f ms a frame (median), %5.2f (95 %%), %5.2f (most)%n",
                what,
                worked.size() / SECONDS,
                redraws / SECONDS,
                painting,
                worked.get(worked.size() / 2),
                worked.get(worked.size() * 95 / 100),
                worked.get(worked.size() - 1));
    }

    /** Time that the painting thread has had of a processor: tells more than the clock where others work too. */
    private static double paintingMillis() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getAllThreadIds())
                .filter(id -> threads.getThreadInfo(id).getThreadName().equals("plan painter"))
                .mapToDouble(id -> threads.getThreadCpuTime(id) / 1e6)
                .sum();
    }
}
