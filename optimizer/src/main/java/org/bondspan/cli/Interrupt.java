package org.bondspan.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * An interrupt from the keyboard or a termination asks the command that runs to answer with what it has; the program
 * then ends with the exit code of that answer.
 */
final class Interrupt implements BooleanSupplier {
    private static final long PATIENCE_IN_SECONDS = 60;

    private final CountDownLatch finished = new CountDownLatch(1);
    private final AtomicInteger exit = new AtomicInteger();
    private volatile boolean asked;

    private Interrupt() {}

    /** Watches for interrupts from now on. */
    static Interrupt watch() {
        Interrupt interrupt = new Interrupt();
        Runtime.getRuntime().addShutdownHook(new Thread(interrupt::end, "interrupt"));
        return interrupt;
    }

    /** The command has answered. */
    void finish(int exitCode) {
        exit.set(exitCode);
        finished.countDown();
    }

    @Override
    public boolean getAsBoolean() {
        return asked;
    }

    /** Also called at an ordinary end, when there is nothing to wait for. */
    private void end() {
        if (finished.getCount() == 0) {
            return;
        }
        asked = true;
        try {
            if (finished.await(PATIENCE_IN_SECONDS, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(exit.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
