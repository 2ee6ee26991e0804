package org.bondspan.io;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.io.plan.PlanPlaces;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.LengthUnit;

/**
 * Finds every place in plan that a file draws, in the order of its text, and which of them are one. Fields are known by
 * their names, which mean the same wherever they occur; what is not well formed is passed over, its reader reports it.
 */
final class PlaceSurvey {
    /** More columns than this are a slip, and would fill the memory. */
    static final int MAX_CROSSINGS = 100_000;

    private final LengthUnit unit;
    private final PlanPlaces places = new PlanPlaces();
    private final IdentityHashMap<Node, PlanPoint> points = new IdentityHashMap<>();
    private final IdentityHashMap<Node, List<List<PlanPoint>>> grids = new IdentityHashMap<>();

    private PlaceSurvey(LengthUnit unit) {
        this.unit = unit;
    }

    static PlaceSurvey of(Node file, LengthUnit unit) {
        PlaceSurvey survey = new PlaceSurvey(unit);
        survey.walk("", file);
        return survey;
    }

    /** The place that an {@code [x, y]} or {@code [x, y, h]} is; empty where it is not well formed. */
    Optional<PlanPoint> find(Node point) {
        return Optional.ofNullable(points.get(point));
    }

    /**
     * The crossings of a grid: for each x from west to east those from south to north; empty where it is not well
     * formed.
     */
    Optional<List<List<PlanPoint>>> findCrossings(Node grid) {
        return Optional.ofNullable(grids.get(grid));
    }

    private void walk(String name, Node node) {
        if (node instanceof Node.Struct struct) {
            if (name.equals("grid")) {
                noteGrid(struct);
            }
            struct.members().forEach(member -> walk(member.name(), member.value()));
        } else if (node instanceof Node.Array array) {
            switch (name) {
                case "at" -> notePoint(array);
                case "outline", "line", "columns" -> notePoints(array);
                case "beams" -> array.items().forEach(this::notePoints);
                default -> array.items().forEach(item -> walk(name, item));
            }
        }
    }

    private void notePoints(Node list) {
        if (list instanceof Node.Array array) {
            array.items().forEach(item -> {
                walk("", item);
                notePoint(item);
            });
        }
    }

    private void notePoint(Node node) {
        if (node instanceof Node.Array pair && pair.items().size() >= 2) {
            Optional<Long> x = coordinate(pair.items().get(0));
            Optional<Long> y = coordinate(pair.items().get(1));
            if (x.isPresent() && y.isPresent()) {
                points.put(node, places.snap(new PlanPoint(x.get(), y.get())));
            }
        }
    }

    private void noteGrid(Node.Struct grid) {
        Optional<List<Long>> xs = grid.find("x").flatMap(this::coordinates);
        Optional<List<Long>> ys = grid.find("y").flatMap(this::coordinates);
        if (xs.isPresent()
                && ys.isPresent()
                && (long) xs.get().size() * ys.get().size() <= MAX_CROSSINGS) {
            crossings(xs.get(), ys.get()); // they count as places in file order
            grids.put(grid, crossings(sorted(xs.get()), sorted(ys.get())));
        }
    }

    private List<List<PlanPoint>> crossings(List<Long> xs, List<Long> ys) {
        return xs.stream()
                .map(x -> ys.stream().map(y -> places.snap(new PlanPoint(x, y))).toList())
                .toList();
    }

    private static List<Long> sorted(List<Long> coordinates) {
        return coordinates.stream().sorted().distinct().toList();
    }

    private Optional<List<Long>> coordinates(Node list) {
        if (!(list instanceof Node.Array array)) {
            return Optional.empty();
        }
        List<Long> all = array.items().stream()
                .flatMap(item -> coordinate(item).stream())
                .toList();
        return all.size() == array.items().size() ? Optional.of(all) : Optional.empty();
    }

    private Optional<Long> coordinate(Node node) {
        return node instanceof Node.Decimal decimal
                ? decimal.value().flatMap(value -> Values.nanometres(value, unit))
                : Optional.empty();
    }
}
