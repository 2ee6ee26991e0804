package org.bondspan.viewer.state;

import java.util.Optional;
import org.bondspan.sheet.plan.Palette;

/**
 * All that the window shows. A command makes the next one.
 *
 * @param answer to the question that was asked last and answered
 * @param before the answer that it follows on the same site, for the difference
 * @param pinned an answer kept for comparison
 */
public record Desk(
        Optional<Opened> opened,
        Optional<Answer> answer,
        Optional<Answer> before,
        Optional<Answer> pinned,
        Optional<Reviewed> review,
        Optional<Work> work,
        Optional<Message> message,
        Look look) {

    /** Nothing opened yet. */
    public static Desk empty(Palette palette) {
        return new Desk(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Look.first(palette));
    }

    /** The plan of the answer, or the site as drawn while there is none. */
    public Optional<Plan> plan() {
        return answer.map(Answer::plan).or(() -> opened.map(Opened::unrouted));
    }

    /** The proposal, where that is what is shown. */
    public Optional<Reviewed> proposal() {
        return look.showing() == Showing.PROPOSAL ? review : Optional.empty();
    }

    /** Whether there is such a plan to show. */
    public boolean has(Showing showing) {
        return switch (showing) {
            case ANSWER -> true;
            case PROPOSAL -> review.isPresent();
            case SIDE_BY_SIDE -> pinned.isPresent() || review.isPresent();
        };
    }

    /** Shows the answer where what was shown is there no more. */
    private Desk withoutTheGone() {
        return has(look.showing()) ? this : with(look.showing(Showing.ANSWER));
    }

    public Desk with(Look next) {
        return new Desk(opened, answer, before, pinned, review, work, message, next);
    }

    public Desk saying(Message next) {
        return new Desk(opened, answer, before, pinned, review, work, Optional.of(next), look);
    }

    public Desk silent() {
        return new Desk(opened, answer, before, pinned, review, work, Optional.empty(), look);
    }

    public Desk working(Optional<Work> next) {
        return new Desk(opened, answer, before, pinned, review, next, message, look);
    }

    public Desk pinning(Optional<Answer> next) {
        return new Desk(opened, answer, before, next, review, work, message, look).withoutTheGone();
    }

    public Desk reviewing(Optional<Reviewed> next) {
        return new Desk(opened, answer, before, pinned, next, work, message, look).withoutTheGone();
    }

    public Desk asking(Opened next) {
        return new Desk(Optional.of(next), answer, before, pinned, review, work, message, look);
    }

    public Desk answered(Answer next) {
        return new Desk(opened, Optional.of(next), answer.or(() -> before), pinned, review, work, message, look);
    }

    /** Another site, with nothing left of the last but the looks of the window. */
    public Desk opening(Opened next, Look nextLook) {
        return empty(nextLook.palette()).asking(next).with(nextLook);
    }
}
