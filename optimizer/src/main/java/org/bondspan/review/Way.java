package org.bondspan.review;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal.ProposedConductor;

/**
 * A way between a service and something to be connected.
 *
 * @param nodes from the service to the thing
 * @param spans between them
 */
record Way(List<Node> nodes, List<Span> spans) {
    Way {
        nodes = List.copyOf(nodes);
        spans = List.copyOf(spans);
    }

    /** The nodes between its ends. */
    List<Node> passed() {
        return nodes.size() < 3 ? List.of() : nodes.subList(1, nodes.size() - 1);
    }

    List<ProposedConductor> conductors() {
        return spans.stream()
                .map(Span::conductor)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    boolean uses(String conductor) {
        return spans.stream().anyMatch(span -> span.isOf(conductor));
    }

    /** All that is unlawful on it, sizes aside. */
    Set<Offence> offences() {
        Set<Offence> offences = new LinkedHashSet<>();
        spans.forEach(span -> offences.addAll(span.offences()));
        passed().forEach(node -> offences.addAll(node.offences()));
        return offences;
    }
}
