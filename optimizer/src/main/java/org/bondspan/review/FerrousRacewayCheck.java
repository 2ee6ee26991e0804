package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;

/** 250.64(E): a ferrous raceway is bonded to its conductor at both ends. */
final class FerrousRacewayCheck implements ConductorCheck {
    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        boolean open = conductor.enclosure() == Enclosure.FERROUS_RACEWAY && !conductor.bothEndsBonded();
        return open
                ? Optional.of(new Offence(
                        CheckedRule.RACEWAY_NOT_BONDED,
                        conductor.id(),
                        "The ferrous raceway of " + conductor.id() + " is not bonded to it at both ends.",
                        "Bond it at each end, or use nonferrous raceway."))
                : Optional.empty();
    }
}
