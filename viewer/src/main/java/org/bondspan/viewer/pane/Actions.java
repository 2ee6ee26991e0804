package org.bondspan.viewer.pane;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.bondspan.layout.Objective;
import org.bondspan.site.CodeEdition;
import org.bondspan.site.PlanPoint;
import org.bondspan.usecase.Question;
import org.bondspan.viewer.model.Switch;
import org.bondspan.viewer.state.Asking;
import org.bondspan.viewer.state.Command;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Looking;
import org.bondspan.viewer.state.Message;
import org.bondspan.viewer.state.Opened;
import org.bondspan.viewer.work.Bench;

/** What a user can do in the window. */
final class Actions {
    private final Supplier<Desk> desk;
    private final Consumer<Command> runner;
    private final Bench bench;
    private final Dialogs dialogs;

    Actions(Supplier<Desk> desk, Consumer<Command> runner, Bench bench, Dialogs dialogs) {
        this.desk = desk;
        this.runner = runner;
        this.bench = bench;
        this.dialogs = dialogs;
    }

    Desk desk() {
        return desk.get();
    }

    Dialogs dialogs() {
        return dialogs;
    }

    Bench bench() {
        return bench;
    }

    void run(Command command) {
        runner.accept(command);
    }

    void openSite() {
        dialogs.open(Dialogs.Kind.SITE).ifPresent(bench::open);
    }

    /** Reads the opened file once more. */
    void readAgain() {
        opened().ifPresent(opened -> bench.open(opened.path()));
    }

    /** Takes a file for what its name says. */
    void open(Path path) {
        String name = String.valueOf(path.getFileName());
        if (name.endsWith(".proposal.json") || name.endsWith(".result.json")) {
            review(path);
        } else if (name.endsWith(".prices.json")) {
            price(path);
        } else {
            bench.open(path);
        }
    }

    void openProposal() {
        ofSite(opened -> dialogs.open(Dialogs.Kind.PROPOSAL).ifPresent(path -> bench.review(opened, path)));
    }

    void openPrices() {
        ofSite(opened -> dialogs.open(Dialogs.Kind.PRICES).ifPresent(book -> bench.price(opened, book)));
    }

    void review(Path path) {
        ofSite(opened -> bench.review(opened, path));
    }

    void price(Path book) {
        ofSite(opened -> bench.price(opened, book));
    }

    private void ofSite(Consumer<Opened> action) {
        opened().ifPresentOrElse(
                        action,
                        () -> run(Asking.say(
                                Message.notice("Open the site first", "Proposals and price books belong to a site."))));
    }

    void turn(Switch.What what) {
        ask(opened -> Switch.turned(opened, what));
    }

    void edition(CodeEdition edition) {
        ask(opened -> opened.question().withEdition(edition));
    }

    void objective(Objective objective) {
        ask(opened -> opened.question().withObjective(objective));
    }

    void askAsDrawn() {
        ask(opened -> Question.asDrawn(opened.site()));
    }

    private void ask(Function<Opened, Question> question) {
        opened().ifPresent(opened -> {
            Question next = question.apply(opened);
            if (!next.equals(opened.question())) {
                bench.ask(opened, next);
            }
        });
    }

    void measure(PlanPoint place) {
        run(Looking.measure(place));
        desk().look()
                .measure()
                .ifPresent(measure -> desk().plan().ifPresent(plan -> bench.measure(plan.site(), measure)));
    }

    void stop() {
        bench.stop(desk());
    }

    private Optional<Opened> opened() {
        return desk().opened();
    }
}
