package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;

/** A check that one conductor passes or fails whatever its size. */
interface ConductorCheck {
    Optional<Offence> find(ProposedConductor conductor);
}
