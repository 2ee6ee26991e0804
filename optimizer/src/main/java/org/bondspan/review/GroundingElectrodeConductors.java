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

/** The conductors between each service and the electrode, frame or pipe that is nearest to it along the copper. */
final class GroundingElectrodeConductors {
    /** Tolls are counted in hundredths of an inch, which keeps sums of any building within range. */
    private static final long NANOMETRES_PER_TOLL = 254_000;

    /** Lengths written to 0.01 ft or m each may differ by so much in all. */
    private static final int ROUNDING = 100;

    /** A conductor of unknown length counts as longer than any building. */
    private static final int UNKNOWN = 100_000_000;

    private final ProposedTie tie;
    private final Toll toll = new ByLength();
    private final Set<String> ids = new LinkedHashSet<>();

    GroundingElectrodeConductors(SiteMetal metal, Ends ends, Proposal proposal) {
        this.tie = new ProposedTie(metal, ends, proposal, conductor -> List.of());
        for (Service service : metal.site().services()) {
            add(tie.service(service.id()));
        }
    }

    Set<String> ids() {
        return ids;
    }

    /** Things equally near to the service are all first. */
    private void add(Node service) {
        List<Way> ways = reachedInCopper(service).stream()
                .flatMap(first -> WaySearch.find(service, List.of(first), toll).stream())
                .toList();
        int least = ways.stream().mapToInt(this::length).min().orElse(0);
        ways.stream()
                .filter(way -> length(way) - least <= ROUNDING)
                .flatMap(way -> way.conductors().stream())
                .forEach(conductor -> ids.add(conductor.id()));
    }

    private int length(Way way) {
        return way.spans().stream().mapToInt(toll::along).sum();
    }

    /** Metal reached without passing other metal. */
    private static Set<Node> reachedInCopper(Node service) {
        Set<Node> seen = new LinkedHashSet<>();
        Deque<Node> open = new ArrayDeque<>(List.of(service));
        while (!open.isEmpty()) {
            Node node = open.remove();
            if (seen.add(node) && (node == service || node.kind() == Kind.COPPER)) {
                node.spans().stream().map(span -> span.other(node)).forEach(open::add);
            }
        }
        seen.removeIf(node -> node.kind() == Kind.COPPER || node.kind() == Kind.SERVICE);
        return seen;
    }

    private static final class ByLength implements Toll {
        @Override
        public int along(Span span) {
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
