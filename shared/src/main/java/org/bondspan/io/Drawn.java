package org.bondspan.io;

import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Reads where something is: places in plan, levels, positions. */
final class Drawn {
    private static final String POINT = "Write [x, y] in {unit}";
    private static final PlanPoint NOWHERE = new PlanPoint(0, 0);

    private final Fields fields;
    private final Scope scope;

    private Drawn(Fields fields) {
        this.fields = fields;
        this.scope = fields.scope();
    }

    static Drawn in(Fields fields) {
        return new Drawn(fields);
    }

    Position position() {
        return new Position(level(), at(), fields.findLength("height").orElse(Length.ZERO));
    }

    PlanPoint at() {
        return fields.require("at", POINT)
                .flatMap(node -> point(node, fields.path("at")))
                .orElse(NOWHERE);
    }

    /** The level it is on: the only one where none is named. */
    String level() {
        if (!fields.has("level") && scope.levels().size() > 1) {
            fields.report("level", "is missing", "The site has several levels; name one of " + levelList());
        }
        return fields.findReference("level", Kind.LEVEL)
                .or(() -> scope.levels().stream().findFirst())
                .orElse("");
    }

    /** The levels it stands on: the only one where none is named. */
    List<String> levels() {
        if (!fields.has("levels")) {
            if (scope.levels().size() != 1) {
                fields.report("levels", "is missing", "Name its levels, of " + levelList());
            }
            return scope.levels().stream().limit(1).toList();
        }
        if (fields.isWithout("levels")) {
            fields.report("levels", "is empty", "Name its levels, of " + levelList());
        }
        return fields.references("levels", Kind.LEVEL);
    }

    private String levelList() {
        return String.join(", ", scope.levels());
    }

    /** A place written {@code [x, y]}. */
    Optional<PlanPoint> point(Node node, String path) {
        if (!(node instanceof Node.Array pair) || pair.items().size() != 2) {
            return scope.values()
                    .reject(
                            node,
                            path,
                            "must be two numbers [x, y]",
                            "Write x to the east and y to the north, in "
                                    + scope.values().unit().symbol());
        }
        return place(node, path, pair.items());
    }

    /** The first two parts of a place in plan. */
    Optional<PlanPoint> place(Node node, String path, List<Node> parts) {
        Optional<Length> x = scope.values().length(parts.get(0), path + "[0]");
        Optional<Length> y = scope.values().length(parts.get(1), path + "[1]");
        return x.isPresent() && y.isPresent() ? scope.survey().find(node) : Optional.empty();
    }
}
