package org.bondspan.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;

/** Finds the way with the least toll, and among those with few spans: Dijkstra over the proposed tie. */
final class WaySearch {
    /** What it takes to go along a span or through a node; {@link #CLOSED} where a way may not. */
    interface Toll {
        int CLOSED = Integer.MAX_VALUE;

        int along(Span span);

        int through(Node node);

        /** The same, with no way through that node. */
        default Toll closedAt(Node closed) {
            return new Closed(this, span -> false, closed::equals);
        }

        /** The same, with no way along those spans. */
        default Toll closedAlong(Predicate<Span> closed) {
            return new Closed(this, closed, node -> false);
        }
    }

    private record Closed(Toll otherwise, Predicate<Span> spans, Predicate<Node> nodes) implements Toll {
        @Override
        public int along(Span span) {
            return spans.test(span) ? CLOSED : otherwise.along(span);
        }

        @Override
        public int through(Node node) {
            return nodes.test(node) ? CLOSED : otherwise.through(node);
        }
    }

    private final Node start;
    private final Toll toll;
    private final Map<Node, Step> reached = new HashMap<>();
    private final PriorityQueue<Step> dearer = new PriorityQueue<>();
    /** Steps of the toll reached so far, in order of their spans: most searches need no other. */
    private final Deque<Step> level = new ArrayDeque<>();

    private record Step(long toll, int spans, int order, Node node, Optional<Span> by) implements Comparable<Step> {
        @Override
        public int compareTo(Step other) {
            int byToll = Long.compare(toll, other.toll);
            int bySpans = byToll != 0 ? byToll : Integer.compare(spans, other.spans);
            return bySpans != 0 ? bySpans : Integer.compare(order, other.order);
        }

        boolean isBetterThan(Step other) {
            return toll < other.toll || (toll == other.toll && spans < other.spans);
        }
    }

    private WaySearch(Node start, Toll toll) {
        this.start = start;
        this.toll = toll;
    }

    /** The best way to any of the goals. */
    static Optional<Way> find(Node start, Collection<Node> goals, Toll toll) {
        return new WaySearch(start, toll).find(Set.copyOf(goals));
    }

    private Optional<Way> find(Set<Node> goals) {
        Set<Node> settled = new HashSet<>();
        offer(new Step(0, 0, 0, start, Optional.empty()), 0);
        while (!level.isEmpty() || !dearer.isEmpty()) {
            Step here = level.isEmpty() ? dearer.remove() : level.remove();
            if (!settled.add(here.node)) {
                continue;
            }
            if (goals.contains(here.node)) {
                return Optional.of(way(here.node));
            }
            goOn(here);
        }
        return Optional.empty();
    }

    private void goOn(Step here) {
        int passing = here.node == start ? 0 : toll.through(here.node);
        if (passing == Toll.CLOSED) {
            return;
        }
        for (Span span : here.node.spans()) {
            int along = toll.along(span);
            if (along != Toll.CLOSED) {
                long sum = here.toll + passing + along;
                offer(
                        new Step(sum, here.spans + 1, reached.size(), span.other(here.node), Optional.of(span)),
                        here.toll);
            }
        }
    }

    private void offer(Step step, long tollSoFar) {
        Step before = reached.get(step.node);
        if (before == null || step.isBetterThan(before)) {
            reached.put(step.node, step);
            (step.toll == tollSoFar ? level : dearer).add(step);
        }
    }

    private Way way(Node goal) {
        List<Node> nodes = new ArrayList<>(List.of(goal));
        List<Span> spans = new ArrayList<>();
        for (Node at = goal; at != start; ) {
            Span span = step(at).by.orElseThrow();
            spans.add(span);
            at = span.other(at);
            nodes.add(at);
        }
        Collections.reverse(nodes);
        Collections.reverse(spans);
        return new Way(nodes, spans);
    }

    private Step step(Node node) {
        Step step = reached.get(node);
        if (step == null) {
            throw new IllegalStateException("no way leads to " + node.id());
        }
        return step;
    }
}
