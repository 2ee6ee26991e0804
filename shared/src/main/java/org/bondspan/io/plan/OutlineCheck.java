package org.bondspan.io.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.bondspan.site.PlanPoint;
import org.jspecify.annotations.Nullable;

/**
 * Whether an outline is a simple polygon: no edge crosses, touches or covers another but neighbours at their common
 * vertex. A sweep from west to east keeps the edges it is crossing in their order from south to north and tests edges
 * as they become neighbours (M. I. Shamos and D. Hoey, "Geometric intersection problems", 1976): n log n, in exact
 * integers.
 */
public final class OutlineCheck {
    /** Two edges with a place in common that they should not have; edge i runs from vertex i to the next. */
    public record Clash(int edge, int other) {}

    private record Edge(int number, Segment segment) {}

    private final List<PlanPoint> outline;
    private final TreeSet<Edge> crossed = new TreeSet<>(this::southToNorth);
    private Optional<Clash> clash = Optional.empty();

    private OutlineCheck(List<PlanPoint> outline) {
        this.outline = outline;
    }

    /** The first clash that the sweep meets. At least three vertices, no two neighbours at one place. */
    public static Optional<Clash> find(List<PlanPoint> outline) {
        return new OutlineCheck(outline).sweep();
    }

    private Optional<Clash> sweep() {
        List<Integer> vertices =
                new ArrayList<>(IntStream.range(0, outline.size()).boxed().toList());
        vertices.sort(Comparator.comparing(outline::get, Segment.SWEEP));
        for (int i = 0; i < vertices.size() && clash.isEmpty(); i++) {
            if (i > 0 && outline.get(vertices.get(i)).equals(outline.get(vertices.get(i - 1)))) {
                return Optional.of(new Clash(vertices.get(i - 1), vertices.get(i)));
            }
            pass(vertices.get(i));
        }
        return clash;
    }

    private void pass(int vertex) {
        PlanPoint place = outline.get(vertex);
        List<Edge> both = List.of(edge(Math.floorMod(vertex - 1, outline.size())), edge(vertex));
        both.stream().filter(edge -> edge.segment().last().equals(place)).forEach(this::leave);
        both.stream().filter(edge -> edge.segment().first().equals(place)).forEach(this::enter);
    }

    private Edge edge(int number) {
        return new Edge(number, new Segment(outline.get(number), outline.get((number + 1) % outline.size())));
    }

    private void enter(Edge edge) {
        if (clash.isPresent()) {
            return;
        }
        test(crossed.lower(edge), edge);
        test(edge, crossed.higher(edge));
        crossed.add(edge);
    }

    private void leave(Edge edge) {
        if (clash.isPresent()) {
            return;
        }
        test(crossed.lower(edge), crossed.higher(edge));
        crossed.remove(edge);
    }

    private void test(@Nullable Edge a, @Nullable Edge b) {
        if (a != null && b != null && !areNeighbours(a, b) && a.segment().meets(b.segment())) {
            report(a, b);
        }
    }

    private boolean areNeighbours(Edge a, Edge b) {
        int apart = Math.floorMod(a.number() - b.number(), outline.size());
        return apart == 1 || apart == outline.size() - 1;
    }

    private void report(Edge a, Edge b) {
        clash = clash.or(
                () -> Optional.of(new Clash(Math.min(a.number(), b.number()), Math.max(a.number(), b.number()))));
    }

    /** Order of two edges that one sweep line crosses; a clash where they share more than the vertex they begin at. */
    private int southToNorth(Edge a, Edge b) {
        if (a.number() == b.number()) {
            return 0;
        }
        if (Segment.SWEEP.compare(a.segment().first(), b.segment().first()) > 0) {
            return -southToNorth(b, a);
        }
        Segment s = a.segment();
        boolean fromOnePlace = s.first().equals(b.segment().first());
        PlanPoint place = fromOnePlace ? b.segment().last() : b.segment().first();
        int turn = Segment.turn(s.first(), s.last(), place);
        if (turn == 0) {
            report(a, b);
            return Integer.compare(b.number(), a.number());
        }
        return -turn;
    }
}
