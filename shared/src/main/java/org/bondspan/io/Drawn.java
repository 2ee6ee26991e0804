package org.bondspan.io;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.io.json.Node;
import org.bondspan.io.plan.OutlineCheck;
import org.bondspan.site.Connection;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Reads what is drawn: places, positions, connections, lines and outlines. */
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
        Optional<Node.Array> list = fields.findList("levels");
        if (list.isEmpty()) {
            if (!fields.has("levels") && scope.levels().size() != 1) {
                fields.report("levels", "is missing", "Name its levels, of " + levelList());
            }
            return scope.levels().stream().limit(1).toList();
        }
        return ids(list.get());
    }

    private List<String> ids(Node.Array list) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            Node item = list.items().get(i);
            String path = fields.path("levels") + "[" + i + "]";
            Optional<String> id = scope.values().text(item, path);
            id.ifPresent(level -> scope.ids().refer(Kind.LEVEL, level, item.spot(), path));
            if (id.isPresent() && ids.contains(id.get())) {
                scope.values().reject(item, path, "names the level \"" + id.get() + "\" again", "Remove it");
            }
            id.filter(level -> !ids.contains(level)).ifPresent(ids::add);
        }
        if (list.items().isEmpty()) {
            fields.report("levels", "is empty", "Name its levels, of " + levelList());
        }
        return ids;
    }

    private String levelList() {
        return String.join(", ", scope.levels());
    }

    List<Connection> connections() {
        return connections(connection -> Optional.empty());
    }

    /** Connections of a water-pipe electrode, which may say how far they lie from the point of entrance. */
    List<Connection> connectionsAlongPipe() {
        return connections(connection -> connection.findDistance("fromEntrance"));
    }

    private List<Connection> connections(java.util.function.Function<Fields, Optional<Length>> fromEntrance) {
        Set<String> ids = new HashSet<>();
        return fields.each("connections", "connection", connection -> {
            Optional<String> id = connection.has("id")
                    ? Optional.of(connection.name("id", "Leave the id out, or give it a text"))
                    : Optional.empty();
            connection.find("id");
            if (id.isPresent() && !id.get().isEmpty() && !ids.add(id.get())) {
                connection.report("id", "the id \"" + id.get() + "\" is used twice here", "Give it another id");
            }
            return new Connection(id, Drawn.in(connection).position(), fromEntrance.apply(connection));
        });
    }

    /** At least two vertices, neighbours at different places or heights. */
    Line line(String advice) {
        fields.require("line", advice);
        return findLine().orElseGet(() -> new Line(level(), List.of()));
    }

    Optional<Line> findLine() {
        Length height = fields.findLength("height").orElse(Length.ZERO);
        String level = level();
        return fields.findList("line").map(list -> new Line(level, vertices(list, height)));
    }

    private List<LineVertex> vertices(Node.Array list, Length height) {
        List<LineVertex> vertices = new ArrayList<>();
        if (list.items().size() < 2) {
            fields.report("line", "has fewer than two vertices", "Draw it from vertex to vertex: [[x, y], [x, y]]");
        }
        for (int i = 0; i < list.items().size(); i++) {
            Node item = list.items().get(i);
            String path = fields.path("line") + "[" + i + "]";
            Optional<LineVertex> vertex = vertex(item, path, height);
            if (vertex.isEmpty()) {
                continue;
            }
            if (!vertices.isEmpty() && vertices.get(vertices.size() - 1).equals(vertex.get())) {
                scope.values().reject(item, path, "is the same place as the vertex before it", "Remove one of the two");
            }
            vertices.add(vertex.get());
        }
        return vertices;
    }

    private Optional<LineVertex> vertex(Node node, String path, Length height) {
        boolean hasHeight = node instanceof Node.Array array && array.items().size() == 3;
        if (!hasHeight) {
            return point(node, path).map(at -> new LineVertex(at, height));
        }
        List<Node> parts = ((Node.Array) node).items();
        Optional<Length> own = scope.values().length(parts.get(2), path + "[2]");
        return place(node, path, parts).flatMap(at -> own.map(h -> new LineVertex(at, h)));
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

    private Optional<PlanPoint> place(Node node, String path, List<Node> parts) {
        Optional<Length> x = scope.values().length(parts.get(0), path + "[0]");
        Optional<Length> y = scope.values().length(parts.get(1), path + "[1]");
        return x.isPresent() && y.isPresent() ? scope.survey().find(node) : Optional.empty();
    }

    /** A simple polygon; neighbours at one place, a repeated first vertex among them, are one vertex. */
    List<PlanPoint> outline() {
        List<Node> items = fields.list("outline", "Draw it from vertex to vertex: [[x, y], ...] in {unit}")
                .map(Node.Array::items)
                .orElse(List.of());
        List<PlanPoint> vertices = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        boolean sound = true;
        for (int i = 0; i < items.size(); i++) {
            Optional<PlanPoint> point = point(items.get(i), fields.path("outline") + "[" + i + "]");
            sound &= point.isPresent();
            if (point.isPresent()
                    && (vertices.isEmpty() || !vertices.get(vertices.size() - 1).equals(point.get()))) {
                vertices.add(point.get());
                numbers.add(i);
            }
        }
        if (vertices.size() > 1 && vertices.get(0).equals(vertices.get(vertices.size() - 1))) {
            vertices.remove(vertices.size() - 1);
        }
        if (sound && fields.find("outline").orElse(null) instanceof Node.Array) {
            checkOutline(vertices, numbers, items);
        }
        return vertices;
    }

    private void checkOutline(List<PlanPoint> vertices, List<Integer> numbers, List<Node> items) {
        if (vertices.size() < 3) {
            fields.report("outline", "has fewer than three different vertices", "An outline encloses an area: draw it");
            return;
        }
        OutlineCheck.find(vertices).ifPresent(clash -> {
            int first = numbers.get(clash.edge());
            int second = numbers.get(clash.other());
            scope.values()
                    .reject(
                            items.get(second),
                            fields.path("outline") + "[" + second + "]",
                            "the outline crosses or touches itself: the edge from vertex " + first
                                    + " meets the edge from vertex " + second,
                            "Draw the outline once around, without crossing; vertices count from 0");
        });
    }
}
