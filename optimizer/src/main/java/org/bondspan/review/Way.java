package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal.ProposedConductor;

/**
 * A way between a service and something to be connected.
 *
 * @param vertices keys from the service to the thing
 * @param spans between them
 * @param offences all that is unlawful on it, sizes too small included; empty on a lawful way of sufficient size
 */
record Way(List<String> vertices, List<Span> spans, Set<Offence> offences) {
    Way {
        vertices = List.copyOf(vertices);
        spans = List.copyOf(spans);
        offences = Set.copyOf(offences);
    }

    boolean isLawful() {
        return offences.isEmpty();
    }

    List<ProposedConductor> conductors() {
        return spans.stream()
                .map(Span::conductor)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }
}
