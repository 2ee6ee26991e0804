package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.LengthUnit;
import org.bondspan.viewer.plan.Camera;
import org.bondspan.viewer.plan.Measured;
import org.bondspan.viewer.plan.PlanScene;
import org.bondspan.viewer.state.Answer;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Measure;
import org.bondspan.viewer.state.Showing;
import org.bondspan.viewer.state.Whereabouts;

/** The plans that a desk shows: one, or two side by side. */
public final class Scenes {
    private Scenes() {}

    /**
     * A plan and what stands above it.
     *
     * @param title what it is a plan of; where there is one plan, the window says so anyway
     * @param head the same for those who have the picture alone: verdict and totals, what is supposed; a line each
     */
    public record Titled(String title, List<String> head, PlanScene scene) {
        public Titled {
            head = List.copyOf(head);
        }
    }

    /** From left to right; none without a site. */
    public static List<Titled> of(Desk desk) {
        Showing showing = desk.look().showing();
        Optional<Titled> kept = showing == Showing.SIDE_BY_SIDE
                ? desk.pinned().flatMap(pinned -> answer("Pinned: ", pinned, desk))
                : Optional.empty();
        Optional<Titled> proposal = showing == Showing.ANSWER || kept.isPresent() ? Optional.empty() : proposal(desk);
        Optional<Titled> answer = showing == Showing.PROPOSAL ? Optional.empty() : answer(desk);
        return Stream.of(kept, proposal, answer).flatMap(Optional::stream).toList();
    }

    private static Optional<Titled> proposal(Desk desk) {
        return desk.review().flatMap(review -> {
            String title = "Proposal: " + review.path().getFileName();
            String verdict = title + ": " + Totals.of(review).sentence();
            return titled(title, List.of(verdict), review.pictures(), desk);
        });
    }

    private static Optional<Titled> answer(Desk desk) {
        return desk.answer()
                .flatMap(answer -> answer("Answer: ", answer, desk))
                .or(() -> desk.plan()
                        .flatMap(plan -> titled(
                                "As drawn",
                                List.of("As drawn: " + Totals.unanswered(desk).sentence()),
                                plan.pictures(),
                                desk)));
    }

    private static Optional<Titled> answer(String which, Answer answer, Desk desk) {
        List<String> head = new ArrayList<>();
        head.add(which + Totals.of(answer).sentence());
        desk.opened().ifPresent(opened -> head.addAll(answer.question().suppositions(opened.site())));
        return titled(which + Totals.line(answer), head, answer.plan().pictures(), desk);
    }

    private static Optional<Titled> titled(String title, List<String> head, Map<String, Picture> pictures, Desk desk) {
        return Optional.ofNullable(pictures.get(desk.look().level()))
                .map(picture -> new Titled(title, head, scene(picture, desk)));
    }

    private static PlanScene scene(Picture picture, Desk desk) {
        LengthUnit unit =
                desk.opened().map(opened -> opened.site().lengthUnit()).orElse(LengthUnit.FOOT);
        return new PlanScene(
                picture,
                desk.look().camera().orElseGet(() -> fitted(desk)),
                desk.look().palette(),
                desk.look().layers(),
                desk.look().labels(),
                desk.look().selected(),
                measured(desk, unit),
                desk.look().tool(),
                unit);
    }

    /** Around the level as drawn with what is shown, the same for plans side by side. */
    public static Camera fitted(Desk desk) {
        return Camera.around(Whereabouts.findExtent(desk).orElseThrow());
    }

    private static List<Measured> measured(Desk desk, LengthUnit unit) {
        return desk.look()
                .measure()
                .filter(measure -> measure.level().equals(desk.look().level()))
                .map(measure -> lines(measure, unit))
                .orElse(List.of());
    }

    private static List<Measured> lines(Measure measure, LengthUnit unit) {
        if (measure.to().isEmpty()) {
            return List.of(new Measured(Measured.Way.STRAIGHT, List.of(measure.from()), ""));
        }
        List<Measured> lines = new ArrayList<>();
        lines.add(new Measured(
                Measured.Way.STRAIGHT,
                List.of(measure.from(), measure.to().get()),
                Measurement.straight(measure, unit)));
        measure.along().flatMap(along -> along.way()).ifPresent(way -> {
            List<PlanPoint> places = way.line().stream()
                    .filter(place -> place.level().equals(measure.level()))
                    .map(Position::at)
                    .toList();
            if (!places.isEmpty()) {
                lines.add(new Measured(Measured.Way.ALONG_ROUTES, places, Measurement.along(measure, unit)));
            }
        });
        return List.copyOf(lines);
    }
}
