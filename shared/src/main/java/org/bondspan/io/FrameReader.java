package org.bondspan.io;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.bondspan.io.json.Node;
import org.bondspan.io.plan.FrameJoints;
import org.bondspan.io.plan.Segment;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.SitePath.Beam;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.units.Length;

/** Reads structural frames: as a grid, or member by member. */
final class FrameReader {
    private final Fields fields;
    private final Scope scope;

    private FrameReader(Fields fields) {
        this.fields = fields;
        this.scope = fields.scope();
    }

    static StructuralFrame frame(Fields fields) {
        return new FrameReader(fields).frame();
    }

    private StructuralFrame frame() {
        Members members = members();
        Length bottom = fields.findLength("bottom").orElse(Length.ZERO);
        fields.require("top", "Give the height of the top above the floor in {unit}");
        Optional<Length> top = fields.findLength("top");
        Optional<Length> beamHeight = fields.findLength("beamHeight");
        checkHeights(bottom, top, beamHeight);
        return new StructuralFrame(
                fields.id(Kind.FRAME),
                Drawn.in(fields).levels(),
                members.columns(),
                members.beams(),
                bottom,
                top.orElse(bottom),
                beamHeight.or(() -> top).orElse(bottom),
                fields.flag("mayCarry", true),
                fields.requireFlag(
                        "continuous", "Write true where bolts, rivets or welds join all members drawn, else false"),
                fields.flag("bondingRequired", true));
    }

    private void checkHeights(Length bottom, Optional<Length> top, Optional<Length> beamHeight) {
        if (top.isEmpty()) {
            return;
        }
        if (top.get().isLessThan(bottom)) {
            fields.report("top", "lies below the bottom", "Give both as heights above the floor in {unit}");
        } else if (beamHeight.isPresent()
                && (beamHeight.get().isLessThan(bottom) || top.get().isLessThan(beamHeight.get()))) {
            fields.report("beamHeight", "lies outside bottom to top", "Beams join the columns between their ends");
        }
    }

    private Members members() {
        boolean single = fields.has("columns") || fields.has("beams");
        if (fields.has("grid") && single) {
            fields.report(
                    "grid", "is given beside columns or beams", "Draw a frame one way: as a grid, or by its members");
        }
        if (!fields.has("grid") && !single) {
            fields.report("grid", "is missing", "Draw the frame as a grid, or by its columns and beams");
        }
        Optional<Members> grid = fields.findObject("grid", "grid", this::grid);
        Members drawn = drawn();
        return grid.orElse(drawn);
    }

    private Members grid(Fields grid) {
        coordinates(grid, "x");
        coordinates(grid, "y");
        return scope.survey().findCrossings(grid.node()).map(Members::ofGrid).orElse(new Members(List.of(), List.of()));
    }

    private void coordinates(Fields grid, String name) {
        List<Node> items = grid.list(name, "List where the grid lines lie, in {unit}")
                .map(Node.Array::items)
                .orElse(List.of());
        if (items.isEmpty() && grid.findList(name).isPresent()) {
            grid.report(name, "is empty", "List where the grid lines lie, in {unit}");
        }
        if (items.size() > PlaceSurvey.MAX_CROSSINGS / Math.max(1, lines(grid, name.equals("x") ? "y" : "x"))) {
            grid.report(name, "makes more than " + PlaceSurvey.MAX_CROSSINGS + " columns", "Check the grid lines");
        }
        for (int i = 0; i < items.size(); i++) {
            scope.values().length(items.get(i), grid.path(name) + "[" + i + "]");
        }
    }

    private static int lines(Fields grid, String name) {
        return grid.node().find(name).orElse(null) instanceof Node.Array list
                ? list.items().size()
                : 0;
    }

    private Members drawn() {
        Set<PlanPoint> columns = new LinkedHashSet<>();
        List<Beam> beams = new ArrayList<>();
        List<Node> drawnAs = new ArrayList<>();
        List<Segment> segments = new ArrayList<>();
        each("columns", (item, path) -> {
            drawnAs.add(item);
            Drawn.in(fields).point(item, path).ifPresent(at -> {
                columns.add(at);
                segments.add(new Segment(at, at));
            });
        });
        each("beams", (item, path) -> {
            drawnAs.add(item);
            beam(item, path).ifPresent(beam -> {
                beams.add(beam);
                segments.add(new Segment(beam.from(), beam.to()));
            });
        });
        if (segments.size() == drawnAs.size()) {
            checkJoined(segments, drawnAs);
        }
        return new Members(List.copyOf(columns), beams);
    }

    private interface ItemReader {
        void read(Node item, String path);
    }

    private void each(String name, ItemReader reader) {
        List<Node> items = fields.findList(name).map(Node.Array::items).orElse(List.of());
        for (int i = 0; i < items.size(); i++) {
            reader.read(items.get(i), fields.path(name) + "[" + i + "]");
        }
    }

    private Optional<Beam> beam(Node item, String path) {
        if (!(item instanceof Node.Array ends) || ends.items().size() != 2) {
            return scope.values()
                    .reject(item, path, "must be two places [[x, y], [x, y]]", "Give both ends of the beam");
        }
        Optional<PlanPoint> from = Drawn.in(fields).point(ends.items().get(0), path + "[0]");
        Optional<PlanPoint> to = Drawn.in(fields).point(ends.items().get(1), path + "[1]");
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        return from.equals(to)
                ? scope.values().reject(item, path, "begins and ends at the same place", "Give both ends of the beam")
                : Optional.of(new Beam(from.get(), to.get()));
    }

    private void checkJoined(List<Segment> segments, List<Node> drawnAs) {
        if (segments.isEmpty()) {
            if (!fields.has("grid") && (fields.has("columns") || fields.has("beams"))) {
                fields.report("columns", "the frame has no member", "Draw its columns and beams");
            }
            return;
        }
        OptionalInt loose = FrameJoints.findLoose(segments);
        if (loose.isPresent()) {
            int columns =
                    fields.findList("columns").map(list -> list.items().size()).orElse(0);
            int number = loose.getAsInt();
            String path = number < columns ? "columns[" + number + "]" : "beams[" + (number - columns) + "]";
            scope.values()
                    .reject(
                            drawnAs.get(number),
                            fields.path(path),
                            "is not connected with the first member of the frame",
                            "Draw the beam that joins them, or make it a frame of its own");
        }
    }
}
