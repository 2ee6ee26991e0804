package org.bondspan.review;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.review.Node.Kind;
import org.bondspan.review.WaySearch.Toll;
import org.bondspan.site.Service;
import org.bondspan.site.SitePath.NeverCarries;

/**
 * The conductors between each service and the first electrode, frame, pipe or ring: of every conductor that leaves the
 * service, those to the nearest along the copper.
 */
final class GroundingElectrodeConductors {
    /** Tolls are counted in hundredths of an inch, which keeps sums of any building within range. */
    private static final long NANOMETRES_PER_TOLL = 254_000;

    /** Lengths written to 0.01 ft or m each may differ by so much in all. */
    private static final int ROUNDING = 100;

    /** A conductor of unknown length counts as longer than any building. */
    private static final int UNKNOWN = 100_000_000;

    private final SiteMetal metal;
    private final Set<String> ids = new LinkedHashSet<>();

    GroundingElectrodeConductors(SiteMetal metal, Ends ends, Proposal proposal) {
        this.metal = metal;
        ProposedTie tie = new ProposedTie(metal, ends, proposal, conductor -> List.of());
        for (Service service : metal.site().services()) {
            Node node = tie.service(service.id());
            node.spans().forEach(leaving -> add(node, leaving));
        }
    }

    Set<String> ids() {
        return ids;
    }

    /** Things equally near are all first. */
    private void add(Node service, Span leaving) {
        Toll toll = new ByLength(service, leaving);
        List<Way> ways = reachedInCopper(service).stream()
                .flatMap(first -> WaySearch.find(service, List.of(first), toll).stream())
                .toList();
        int least = ways.stream().mapToInt(way -> length(way, toll)).min().orElse(0);
        ways.stream()
                .filter(way -> length(way, toll) - least <= ROUNDING)
                .flatMap(way -> way.conductors().stream())
                .forEach(conductor -> ids.add(conductor.id()));
    }

    private static int length(Way way, Toll toll) {
        return way.spans().stream().mapToInt(toll::along).sum();
    }

    /** Metal reached without passing other metal. */
    private Set<Node> reachedInCopper(Node service) {
        Set<Node> seen = new LinkedHashSet<>();
        Deque<Node> open = new ArrayDeque<>(List.of(service));
        while (!open.isEmpty()) {
            Node node = open.remove();
            if (seen.add(node) && (node == service || node.kind() == Kind.COPPER)) {
                node.spans().stream().map(span -> span.other(node)).forEach(open::add);
            }
        }
        seen.removeIf(node -> !isFirst(node));
        return seen;
    }

    private boolean isFirst(Node node) {
        return switch (node.kind()) {
            case SERVICE, COPPER -> false;
            case ELECTRODE -> true;
            case PATH -> !(metal.path(node.id()) instanceof NeverCarries);
        };
    }

    /** Along the copper, leaving the service by one span. */
    private record ByLength(Node service, Span leaving) implements Toll {
        @Override
        public int along(Span span) {
            if (span != leaving && service.spans().contains(span)) {
                return CLOSED;
            }
            return span.findLength()
                    .map(length -> (int) Math.min(UNKNOWN, length.nanometres() / NANOMETRES_PER_TOLL))
                    .orElse(UNKNOWN);
        }

        @Override
        public int through(Node node) {
            return node.kind() == Kind.COPPER ? 0 : CLOSED;
        }
    }
}
