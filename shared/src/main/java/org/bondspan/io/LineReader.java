package org.bondspan.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.Length;

/** Reads drawn lines. */
final class LineReader {
    private final Fields fields;
    private final Scope scope;

    private LineReader(Fields fields) {
        this.fields = fields;
        this.scope = fields.scope();
    }

    /** At least two vertices, neighbours at different places or heights. */
    static Line read(Fields fields, String advice) {
        fields.require("line", advice);
        return find(fields).orElseGet(() -> new Line(Drawn.in(fields).level(), List.of()));
    }

    /** A line in plan, of what stands from floor to ceiling. */
    static List<PlanPoint> readPlan(Fields fields, String advice) {
        fields.require("line", advice);
        List<LineVertex> vertices = fields.findList("line")
                .map(list -> new LineReader(fields).planVertices(list))
                .orElse(List.of());
        return vertices.stream().map(LineVertex::at).toList();
    }

    private List<LineVertex> planVertices(Node.Array list) {
        for (int i = 0; i < list.items().size(); i++) {
            if (list.items().get(i) instanceof Node.Array place && place.items().size() == 3) {
                String path = fields.path("line") + "[" + i + "]";
                scope.values().reject(place, path, "has a height", "Write [x, y]: a wall stands from floor to ceiling");
            }
        }
        return vertices(list, Length.ZERO);
    }

    static Optional<Line> find(Fields fields) {
        return new LineReader(fields).find();
    }

    private Optional<Line> find() {
        Length height = fields.findLength("height").orElse(Length.ZERO);
        if (!fields.has("line") && !fields.has("level")) {
            // nothing drawn: on a site of several levels there is no level to ask for
            return Optional.empty();
        }
        String level = Drawn.in(fields).level();
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
            return Drawn.in(fields).point(node, path).map(at -> new LineVertex(at, height));
        }
        List<Node> parts = ((Node.Array) node).items();
        Optional<Length> own = scope.values().length(parts.get(2), path + "[2]");
        return Drawn.in(fields).place(node, path, parts).flatMap(at -> own.map(h -> new LineVertex(at, h)));
    }
}
