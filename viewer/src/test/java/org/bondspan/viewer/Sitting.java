package org.bondspan.viewer;

import java.nio.file.Path;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.viewer.state.Command;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.work.Bench;

/** A desk with its bench, without a window. */
public final class Sitting implements AutoCloseable {
    private static final Path SAMPLES = Path.of("..", "samples");
    private static final long PATIENCE_IN_SECONDS = 60;

    private final BlockingQueue<Command> commands = new LinkedBlockingQueue<>();
    private final Bench bench = new Bench(commands::add);
    private Desk desk = Desk.empty(Palette.LIGHT);

    public static Path sample(String name) {
        return SAMPLES.resolve(name);
    }

    /** A sample as opened and answered. */
    public static Desk solved(String name) {
        try (Sitting sitting = new Sitting()) {
            return sitting.open(name);
        }
    }

    /** A sample with a proposal as reviewed. */
    public static Desk reviewed(String site, String proposal) {
        try (Sitting sitting = new Sitting()) {
            Desk opened = sitting.open(site);
            sitting.bench().review(opened.opened().orElseThrow(), sample(proposal));
            return sitting.settle();
        }
    }

    public Desk open(String name) {
        bench.open(sample(name));
        return settle();
    }

    public Bench bench() {
        return bench;
    }

    public Desk desk() {
        return desk;
    }

    public Desk run(Command command) {
        desk = command.on(desk);
        return desk;
    }

    /** Carries out one command that comes from the bench. */
    public Desk next() {
        try {
            Command command = commands.poll(PATIENCE_IN_SECONDS, TimeUnit.SECONDS);
            if (command == null) {
                throw new AssertionError("nothing came in " + PATIENCE_IN_SECONDS + " s; work: " + desk.work());
            }
            return run(command);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** Carries out what comes until no work is under way. */
    public Desk settle() {
        do {
            next();
        } while (desk.work().isPresent() || !commands.isEmpty());
        return desk;
    }

    @Override
    public void close() {
        bench.close();
    }
}
