package org.bondspan.review;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;

/** Unlawful links that a proposal declares or draws, whether or not anything relies on them. */
final class IdleLinks {
    private final ProposedTie tie;
    private final BreakJumpers jumpers;

    IdleLinks(ProposedTie tie, BreakJumpers jumpers) {
        this.tie = tie;
        this.jumpers = jumpers;
    }

    Set<Offence> find(Proposal proposal) {
        Set<Offence> offences = new LinkedHashSet<>(tie.declared());
        for (ProposedConductor conductor : proposal.conductors()) {
            boolean jumper = jumpers.isJumper(conductor);
            List<Node> landed = jumper ? List.of() : tie.ends(conductor);
            landed.stream()
                    .filter(node -> tie.nodes().isBeyond(node) || node.neighbours() > 1)
                    .forEach(node -> offences.addAll(node.offences()));
        }
        return offences;
    }
}
