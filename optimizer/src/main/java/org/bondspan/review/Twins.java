package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;

/** Conductors of one material between the same two ends, in the order of the proposal. */
final class Twins {
    private final ProposedTie tie;
    private final Map<Ends, List<ProposedConductor>> byEnds = new HashMap<>();

    private record Ends(Set<Node> nodes, Material material) {}

    Twins(ProposedTie tie, Proposal proposal) {
        this.tie = tie;
        proposal.conductors()
                .forEach(conductor -> byEnds.computeIfAbsent(ends(conductor), ignored -> new ArrayList<>())
                        .add(conductor));
    }

    private Ends ends(ProposedConductor conductor) {
        return new Ends(Set.copyOf(tie.ends(conductor)), conductor.material());
    }

    /** The conductor itself and those beside it. */
    List<ProposedConductor> of(ProposedConductor conductor) {
        return byEnds.getOrDefault(ends(conductor), List.of(conductor));
    }
}
