package org.bondspan.io;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.io.json.Node;
import org.bondspan.io.plan.OutlineCheck;
import org.bondspan.site.PlanPoint;

/** Reads outlines, which must be simple polygons. */
final class OutlineReader {
    private record Vertex(PlanPoint at, int number, Node written) {}

    private final Fields fields;

    private OutlineReader(Fields fields) {
        this.fields = fields;
    }

    /** Neighbours at one place, a repeated first vertex among them, are one vertex. */
    static List<PlanPoint> read(Fields fields) {
        return new OutlineReader(fields).read();
    }

    private List<PlanPoint> read() {
        Optional<Node.Array> list = fields.list("outline", "Draw it from vertex to vertex: [[x, y], ...] in {unit}");
        if (list.isEmpty()) {
            return List.of();
        }
        List<Vertex> written = written(list.get().items());
        List<Vertex> vertices = withoutRepeats(written);
        if (written.size() == list.get().items().size()) {
            check(vertices);
        }
        return vertices.stream().map(Vertex::at).toList();
    }

    private List<Vertex> written(List<Node> items) {
        List<Vertex> vertices = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            int number = i;
            Node item = items.get(i);
            Drawn.in(fields)
                    .point(item, fields.path("outline") + "[" + i + "]")
                    .ifPresent(at -> vertices.add(new Vertex(at, number, item)));
        }
        return vertices;
    }

    private static List<Vertex> withoutRepeats(List<Vertex> written) {
        List<Vertex> vertices = new ArrayList<>();
        for (Vertex vertex : written) {
            if (vertices.isEmpty() || !vertices.get(vertices.size() - 1).at().equals(vertex.at())) {
                vertices.add(vertex);
            }
        }
        while (vertices.size() > 1
                && vertices.get(0).at().equals(vertices.get(vertices.size() - 1).at())) {
            vertices.remove(vertices.size() - 1);
        }
        return vertices;
    }

    private void check(List<Vertex> vertices) {
        if (vertices.size() < 3) {
            fields.report("outline", "has fewer than three different vertices", "An outline encloses an area: draw it");
            return;
        }
        OutlineCheck.find(vertices.stream().map(Vertex::at).toList())
                .ifPresent(clash -> report(vertices.get(clash.edge()), vertices.get(clash.other())));
    }

    private void report(Vertex first, Vertex second) {
        fields.scope()
                .values()
                .reject(
                        second.written(),
                        fields.path("outline") + "[" + second.number() + "]",
                        "the outline crosses or touches itself: the edge from vertex " + first.number()
                                + " meets the edge from vertex " + second.number(),
                        "Draw the outline once around, without crossing; vertices count from 0");
    }
}
