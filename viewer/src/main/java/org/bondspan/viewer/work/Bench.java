package org.bondspan.viewer.work;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.bondspan.site.Site;
import org.bondspan.usecase.MeasureCopper;
import org.bondspan.usecase.MeasureCopper.PlaceOnPlan;
import org.bondspan.usecase.Question;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Command;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Measure;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.state.Opened;

/**
 * Works for the window on a thread of its own, one work after the other. A new work asks the one under way to stop, and
 * what that still brings no longer counts.
 */
public final class Bench implements AutoCloseable {
    private static final Message GIVEN_UP = Message.notice("Given up. The last answer stands.");

    private final Consumer<Command> sink;
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> thread(task, "work"));
    private final ExecutorService measurer = Executors.newSingleThreadExecutor(task -> thread(task, "measuring"));
    private long number;
    private Halt latest = new Halt();
    private Ending ending = Ending.AT_ONCE;

    /** How a work ends that is given up. */
    private enum Ending {
        /** It leaves nothing behind, so that nobody need wait for it. */
        AT_ONCE,
        /** It writes files: it alone knows whether it still could leave that. */
        IN_ITS_OWN_WORDS
    }

    /** @param sink takes commands to the window's thread, in their order; called from any thread */
    public Bench(Consumer<Command> sink) {
        this.sink = sink;
    }

    private static Thread thread(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        // A search that does not hear of its stop does not keep the program from ending.
        thread.setDaemon(true);
        return thread;
    }

    /** Reads a site file and answers it as drawn. */
    public void open(Path path) {
        run("Reading " + path.getFileName(), path.getFileName() + " cannot be used", (ours, halt) -> {
            Opened opened = SiteReading.read(path);
            sink.accept(Asking.opened(ours, opened));
            return solve(ours, halt, opened);
        });
    }

    /** Asks the opened site something else. */
    public void ask(Opened opened, Question question) {
        sink.accept(Asking.ask(question));
        run("Solving", "The question cannot be answered", (ours, halt) -> solve(ours, halt, opened.asking(question)));
    }

    /** The same site at the prices of a book, answered again. */
    public void price(Opened opened, Path book) {
        run("Reading " + book.getFileName(), book.getFileName() + " cannot be used", (ours, halt) -> {
            Opened priced = SiteReading.priced(opened, book);
            sink.accept(Asking.opened(ours, priced));
            return solve(ours, halt, priced);
        });
    }

    /** Reviews a proposal, or a result, for the site as its file has it. */
    public void review(Opened opened, Path path) {
        run(
                "Reviewing " + path.getFileName(),
                path.getFileName() + " cannot be used",
                (ours, halt) -> Asking.reviewed(ours, Reviewing.of(opened.site(), path, halt::endsSearch)));
    }

    /**
     * Writes all files of an answer into a directory.
     *
     * @param program name and version, for the title blocks
     * @param overwrite asked, on the thread of the work, when some of the files are there already
     */
    public void handOut(Opened opened, Answer answer, String program, Path directory, Predicate<List<Path>> overwrite) {
        run(
                "Drawing sheets and report",
                "The files cannot be written",
                Ending.IN_ITS_OWN_WORDS,
                (ours, halt) -> Asking.done(ours, HandingOut.of(opened, answer, program, directory, overwrite, halt)));
    }

    /** Writes one file; its bytes are made beside the window. */
    public void write(Path file, Supplier<byte[]> bytes) {
        String failing = file.getFileName() + " cannot be written";
        run("Writing " + file.getFileName(), failing, Ending.IN_ITS_OWN_WORDS, (ours, halt) -> {
            byte[] content = bytes.get();
            if (halt.isGivenUp()) {
                return Asking.done(ours, Halt.NOTHING_WRITTEN);
            }
            try {
                Files.write(file, content);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return Asking.done(ours, Message.notice("Written: " + file));
        });
    }

    /** Looks for the shortest way of copper between the places of a measurement. */
    public void measure(Site site, Measure measure) {
        measure.to()
                .ifPresent(to -> measurer.execute(() -> {
                    PlaceOnPlan from = new PlaceOnPlan(measure.level(), measure.from());
                    PlaceOnPlan end = new PlaceOnPlan(measure.level(), to);
                    sink.accept(Looking.measured(measure, new Measure.Along(MeasureCopper.between(site, from, end))));
                }));
    }

    /** Asks a work to end with what it has; asked again, gives it up, and all stays as it was. */
    public void stop(Desk desk) {
        desk.work().ifPresent(work -> {
            if (!work.stopping()) {
                latest.stop();
                sink.accept(Asking.stopping());
                return;
            }
            latest.giveUp();
            if (ending == Ending.AT_ONCE) {
                sink.accept(Asking.failed(work.number(), GIVEN_UP));
            }
        });
    }

    private Command solve(long ours, Halt halt, Opened opened) {
        return Asking.answered(ours, Solving.of(opened, halt::endsSearch, reached -> sink.accept(reached.apply(ours))));
    }

    @FunctionalInterface
    private interface Job {
        Command outcome(long number, Halt halt);
    }

    private void run(String what, String failing, Job job) {
        run(what, failing, Ending.AT_ONCE, job);
    }

    private void run(String what, String failing, Ending how, Job job) {
        latest.outdate();
        Halt own = new Halt();
        latest = own;
        ending = how;
        long ours = ++number;
        sink.accept(Asking.begin(ours, what));
        try {
            worker.execute(() -> sink.accept(outcome(ours, own, failing, job)));
        } catch (RejectedExecutionException closed) {
            // The window is closing: nobody waits for an outcome.
            return;
        }
    }

    private static Command outcome(long ours, Halt halt, String failing, Job job) {
        try {
            return job.outcome(ours, halt);
        } catch (RuntimeException | OutOfMemoryError failure) {
            return Asking.failed(ours, Failures.message(failing, failure));
        }
    }

    @Override
    public void close() {
        latest.outdate();
        worker.shutdownNow();
        measurer.shutdownNow();
    }
}
