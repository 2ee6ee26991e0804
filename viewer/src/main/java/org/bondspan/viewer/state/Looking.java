package org.bondspan.viewer.state;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Palette;
import org.bondspan.site.PlanPoint;
import org.bondspan.viewer.plan.Camera;
import org.bondspan.viewer.plan.Labels;
import org.bondspan.viewer.plan.Tool;

/** Commands that change how things are looked at, and nothing else. */
public final class Looking {
    private Looking() {}

    /** Says so where there is no such level. */
    public static Command atLevel(String level) {
        return new Command("level " + level, desk -> {
            if (desk.look().level().equals(level)) {
                return desk;
            }
            boolean there = desk.plan()
                    .filter(plan -> plan.pictures().containsKey(level))
                    .isPresent();
            return there
                    ? desk.with(levelOf(desk.look(), level))
                    : desk.saying(Message.trouble("There is no level " + level, List.of("Choose one above the plan.")));
        });
    }

    /** To the level so many further up, or down where negative; stays where there is none. */
    public static Command levelsUp(int count) {
        return new Command(
                "level",
                desk -> desk.opened()
                        .map(opened -> {
                            var levels = opened.site().levels().stream()
                                    .map(level -> level.id())
                                    .toList();
                            int next = levels.indexOf(desk.look().level()) + count;
                            return next < 0 || next >= levels.size()
                                    ? desk
                                    : atLevel(levels.get(next)).on(desk);
                        })
                        .orElse(desk));
    }

    public static Command through(Camera camera) {
        return look("view", look -> look.withCamera(camera));
    }

    public static Command fitted() {
        return look("fit", Look::fitted);
    }

    /** Nearer by a factor, further where it is below 1. */
    public static Command zoomed(double factor) {
        return new Command(
                "zoom",
                desk -> Whereabouts.findExtent(desk)
                        .map(extent -> desk.with(desk.look()
                                .withCamera(desk.look()
                                        .camera()
                                        .orElseGet(() -> Camera.around(extent))
                                        .zoomed(factor)
                                        .within(extent))))
                        .orElse(desk));
    }

    public static Command toggle(Layer layer) {
        return look("layer", look -> look.toggling(layer));
    }

    public static Command labels(Labels labels) {
        return look("labels", look -> look.labelled(labels));
    }

    /** Folds facts and schedules away, or brings them back. */
    public static Command foldSchedules() {
        return look(
                "schedules",
                look -> look.with(
                        look.schedules() == Look.Schedules.BESIDE ? Look.Schedules.FOLDED : Look.Schedules.BESIDE));
    }

    public static Command in(Palette palette) {
        return look("light", look -> look.in(palette));
    }

    public static Command with(Tool tool) {
        return look("tool", look -> look.with(tool));
    }

    /** Shows that plan, where there is one. */
    public static Command showing(Showing showing) {
        return new Command(
                "show", desk -> desk.has(showing) ? desk.with(desk.look().showing(showing)) : desk);
    }

    /** Selects what has that id; on the level where it lies, if that is another. */
    public static Command select(String id) {
        return new Command("select", desk -> {
            Look look = desk.look().selecting(Optional.of(id));
            return desk.with(Whereabouts.findLevel(desk, id)
                    .map(level -> levelOf(look, level))
                    .orElse(look));
        });
    }

    /** Selects it, and looks at it where it is not in view already. */
    public static Command reveal(String id) {
        return new Command("select", desk -> {
            Desk next = select(id).on(desk);
            List<PlanPoint> places = Whereabouts.places(next, id);
            return next.look()
                    .camera()
                    .filter(camera -> !places.isEmpty())
                    .map(camera -> next.with(next.look().withCamera(on(camera, Bounds.around(places)))))
                    .orElse(next);
        });
    }

    /** The same view if it shows all of that, else one with that in the middle, from further off if it must be. */
    private static Camera on(Camera camera, Bounds place) {
        Camera least = camera.revealing(place);
        return least.equals(camera)
                ? camera
                : new Camera(
                        place.west() + place.width() / 2,
                        place.south() + place.height() / 2,
                        least.width(),
                        least.height());
    }

    private static Look levelOf(Look look, String level) {
        return look.level().equals(level) ? look : look.at(level).measuring(Optional.empty());
    }

    public static Command selectNothing() {
        return look("select", look -> look.selecting(Optional.empty()).measuring(Optional.empty()));
    }

    /** The next place of a measurement: its first, its second, or the first of another. */
    public static Command measure(PlanPoint place) {
        return look(
                "measure",
                look -> look.measuring(Optional.of(look.measure()
                        .filter(measure -> measure.to().isEmpty())
                        .map(measure -> measure.ended(place))
                        .orElseGet(() -> Measure.begun(look.level(), place)))));
    }

    /** The way of copper of a measurement, unless another has been begun since. */
    public static Command measured(Measure of, Measure.Along way) {
        return look(
                "measure",
                look -> look.measure().equals(Optional.of(of)) ? look.measuring(Optional.of(of.withWay(way))) : look);
    }

    private static Command look(String name, UnaryOperator<Look> change) {
        return new Command(name, desk -> desk.with(change.apply(desk.look())));
    }
}
