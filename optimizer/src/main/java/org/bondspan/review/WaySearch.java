package org.bondspan.review;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.Predicate;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.units.WireSize;

/**
 * Finds the way with the fewest offences, and among those with the fewest spans: Dijkstra over the vertices of the
 * proposal. A lawful way of sufficient size, where there is one, has none.
 */
final class WaySearch {
    private final ProposedTie tie;

    WaySearch(ProposedTie tie) {
        this.tie = tie;
    }

    private record Step(int offences, int spans, String vertex) implements Comparable<Step> {
        @Override
        public int compareTo(Step other) {
            int byOffences = Integer.compare(offences, other.offences);
            int bySpans = byOffences != 0 ? byOffences : Integer.compare(spans, other.spans);
            return bySpans != 0 ? bySpans : vertex.compareTo(other.vertex);
        }
    }

    /** The best way of a pair to any of the goals, sizes judged; empty where nothing joins them at all. */
    Optional<Way> find(Pair pair, Collection<String> goals) {
        return find(pair, goals, span -> true);
    }

    /** Likewise along spans that pass the test only. */
    Optional<Way> find(Pair pair, Collection<String> goals, Predicate<Span> mayUse) {
        String start = tie.serviceVertex(pair.service().id());
        Map<String, Step> best = new HashMap<>();
        Map<String, Span> arrivedBy = new HashMap<>();
        Set<String> settled = new LinkedHashSet<>();
        PriorityQueue<Step> queue = new PriorityQueue<>();
        queue.add(new Step(0, 0, start));
        while (!queue.isEmpty()) {
            Step here = queue.remove();
            if (!settled.add(here.vertex)) {
                continue;
            }
            if (goals.contains(here.vertex)) {
                return Optional.of(way(pair, start, here.vertex, arrivedBy));
            }
            if (!here.vertex.equals(start) && !tie.node(here.vertex).passable()) {
                continue;
            }
            int passing = here.vertex.equals(start)
                    ? 0
                    : passing(pair, tie.node(here.vertex)).size();
            for (Span span : tie.graph().edgesOf(here.vertex)) {
                String next = other(span, here.vertex);
                int offences = here.offences + passing + along(pair, span).size();
                Step step = new Step(offences, here.spans + 1, next);
                boolean better = best.get(next) == null || step.compareTo(best.get(next)) < 0;
                if (mayUse.test(span) && !settled.contains(next) && better) {
                    best.put(next, step);
                    arrivedBy.put(next, span);
                    queue.add(step);
                }
            }
        }
        return Optional.empty();
    }

    private Way way(Pair pair, String start, String goal, Map<String, Span> arrivedBy) {
        List<String> vertices = new ArrayList<>(List.of(goal));
        List<Span> spans = new ArrayList<>();
        Set<Offence> offences = new LinkedHashSet<>();
        for (String at = goal; !at.equals(start); ) {
            Span span = arrivedBy.get(at);
            if (span == null) {
                throw new IllegalStateException("no span leads to " + at);
            }
            spans.add(span);
            offences.addAll(along(pair, span));
            at = other(span, at);
            vertices.add(at);
            if (!at.equals(start)) {
                offences.addAll(passing(pair, tie.node(at)));
            }
        }
        Collections.reverse(vertices);
        Collections.reverse(spans);
        return new Way(vertices, spans, offences);
    }

    String other(Span span, String vertex) {
        String source = tie.graph().getEdgeSource(span);
        return source.equals(vertex) ? tie.graph().getEdgeTarget(span) : source;
    }

    private static List<Offence> passing(Pair pair, Node node) {
        List<Offence> offences = new ArrayList<>(node.offences());
        WireSize need = pair.need(Material.COPPER);
        node.capacity()
                .filter(capacity -> !capacity.isAtLeast(need))
                .ifPresent(capacity -> offences.add(SizeOffence.ofCarrier(node.id(), capacity, need, pair.describe())));
        return offences;
    }

    private static List<Offence> along(Pair pair, Span span) {
        List<Offence> offences = new ArrayList<>(span.offences());
        Optional<ProposedConductor> conductor = span.conductor();
        if (conductor.isPresent() && !pair.isServedBy(conductor.get())) {
            WireSize need = pair.need(conductor.get().material());
            offences.add(SizeOffence.ofConductor(conductor.get(), need, pair.describe()));
        }
        return offences;
    }
}
