package org.bondspan.viewer.state;

import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.bondspan.units.Weight;
import org.bondspan.usecase.Question;

/** Commands about sites, questions, answers and reviews. Those of a work have no effect once another has begun. */
public final class Asking {
    private Asking() {}

    /** Work begins; whatever was said before is outdated. */
    public static Command begin(long number, String what) {
        return new Command(
                what, desk -> desk.silent().working(Optional.of(new Work(number, what, Optional.empty(), false))));
    }

    public static Command reached(long number, Weight best, Weight bound) {
        return ofWork(number, "progress", desk -> desk.working(desk.work().map(work -> work.reaching(best, bound))));
    }

    /** The search is asked for what it has. */
    public static Command stopping() {
        return new Command("stop", desk -> desk.working(desk.work().map(Work::asStopping)));
    }

    /** A site has been read; its answer is still to come. Levels of the same file keep their view. */
    public static Command opened(long number, Opened opened) {
        return ofWork(number, "open", desk -> {
            boolean same = desk.opened().map(Opened::path).equals(Optional.of(opened.path()));
            String first = opened.site().levels().get(0).id();
            Look look =
                    same && opened.unrouted().pictures().containsKey(desk.look().level())
                            ? desk.look().showing(Showing.ANSWER)
                            : desk.look()
                                    .showing(Showing.ANSWER)
                                    .withCameras(Map.of())
                                    .at(first)
                                    .selecting(Optional.empty())
                                    .measuring(Optional.empty());
            return desk.opening(opened, look).working(desk.work().map(work -> work.as("Solving")));
        });
    }

    public static Command ask(Question question) {
        return new Command(
                "ask",
                desk -> desk.opened()
                        .map(opened -> desk.asking(opened.asking(question)))
                        .orElse(desk));
    }

    public static Command answered(long number, Answer answer) {
        return ofWork(number, "answer", desk -> desk.answered(answer).working(Optional.empty()));
    }

    public static Command reviewed(long number, Reviewed review) {
        return ofWork(
                number,
                "review",
                desk -> desk.reviewing(Optional.of(review))
                        .working(Optional.empty())
                        .with(desk.look().showing(Showing.PROPOSAL).selecting(Optional.empty())));
    }

    public static Command closeReview() {
        return new Command("close the proposal", desk -> desk.reviewing(Optional.empty()));
    }

    /** The work came to nothing: the last answer and its question stand. */
    public static Command failed(long number, Message message) {
        return ofWork(
                number, "message", desk -> back(desk).working(Optional.empty()).saying(message));
    }

    private static Desk back(Desk desk) {
        return desk.opened()
                .flatMap(opened -> desk.answer().map(answer -> desk.asking(opened.asking(answer.question()))))
                .orElse(desk);
    }

    public static Command done(long number, Message message) {
        return ofWork(number, "message", desk -> desk.working(Optional.empty()).saying(message));
    }

    public static Command say(Message message) {
        return new Command("message", desk -> desk.saying(message));
    }

    public static Command hush() {
        return new Command("close the message", Desk::silent);
    }

    /** Keeps the answer for comparison. */
    public static Command pin() {
        return new Command("pin", desk -> desk.pinning(desk.answer()));
    }

    public static Command unpin() {
        return new Command("unpin", desk -> desk.pinning(Optional.empty()));
    }

    private static Command ofWork(long number, String name, UnaryOperator<Desk> change) {
        return new Command(
                name,
                desk -> desk.work().filter(work -> work.number() == number).isPresent() ? change.apply(desk) : desk);
    }
}
