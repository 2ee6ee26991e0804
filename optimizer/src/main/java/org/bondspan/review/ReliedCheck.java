package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;

/** A check of one conductor by what relies on it. */
interface ReliedCheck {
    Optional<Offence> find(ProposedConductor conductor);
}
