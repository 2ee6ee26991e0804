package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;

/**
 * An edge of the proposed tie: a stretch of a conductor, or a touch of metal. Compared by identity, since two
 * conductors may run between the same two ends.
 */
final class Span {
    private final Optional<ProposedConductor> conductor;
    private final List<Offence> offences;

    Span(Optional<ProposedConductor> conductor, List<Offence> offences) {
        this.conductor = conductor;
        this.offences = List.copyOf(offences);
    }

    /** The conductor; empty where metal touches metal. */
    Optional<ProposedConductor> conductor() {
        return conductor;
    }

    /** What is unlawful about it whatever its size. */
    List<Offence> offences() {
        return offences;
    }
}
