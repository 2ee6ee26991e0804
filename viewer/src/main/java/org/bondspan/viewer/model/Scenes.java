package org.bondspan.viewer.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.bondspan.viewer.state.Plan;
import org.bondspan.viewer.state.Reviewed;
import org.bondspan.viewer.state.Showing;
import org.bondspan.viewer.state.Whereabouts;

/** The plans that a desk shows: one, or two side by side. */
public final class Scenes {
    private Scenes() {}

    /**
     * A plan and what stands above it.
     *
     * @param title what it is a plan of; where there is one plan, the window says so anyway
     */
    public record Titled(String title, PlanScene scene) {}

    /** From left to right; none without a site. */
    public static List<Titled> of(Desk desk) {
        List<Titled> scenes = new ArrayList<>();
        Showing showing = desk.look().showing();
        if (showing == Showing.SIDE_BY_SIDE && desk.pinned().isPresent()) {
            Answer pinned = desk.pinned().get();
            add("Pinned: " + Totals.line(pinned), pinned.plan().pictures(), desk, scenes);
        } else if (showing != Showing.ANSWER) {
            desk.review().ifPresent(review -> add(title(review), review.pictures(), desk, scenes));
        }
        if (showing != Showing.PROPOSAL || desk.review().isEmpty()) {
            String title = desk.answer()
                    .map(answer -> "Answer: " + Totals.line(answer))
                    .orElse("As drawn");
            desk.plan().map(Plan::pictures).ifPresent(pictures -> add(title, pictures, desk, scenes));
        }
        return List.copyOf(scenes);
    }

    private static String title(Reviewed review) {
        return "Proposal: " + review.path().getFileName();
    }

    private static void add(String title, Map<String, Picture> pictures, Desk desk, List<Titled> scenes) {
        Optional.ofNullable(pictures.get(desk.look().level()))
                .ifPresent(picture -> scenes.add(new Titled(title, scene(picture, desk))));
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
