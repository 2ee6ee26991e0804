package org.bondspan.review;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;

/** 250.64(C): a grounding electrode conductor is joined by exothermic or irreversible means, or on a busbar. */
final class MechanicalJointCheck implements ConductorCheck {
    private final Set<String> mechanically = new LinkedHashSet<>();
    private final Set<String> groundingElectrodeConductors;

    MechanicalJointCheck(SiteMetal metal, Ends ends, Proposal proposal) {
        proposal.joints().stream()
                .filter(joint -> joint.method() == JointMethod.MECHANICAL)
                .forEach(joint -> mechanically.addAll(joint.conductors()));
        this.groundingElectrodeConductors =
                mechanically.isEmpty() ? Set.of() : new GroundingElectrodeConductors(metal, ends, proposal).ids();
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        String id = conductor.id();
        return mechanically.contains(id) && groundingElectrodeConductors.contains(id)
                ? Optional.of(new Offence(
                        CheckedRule.MECHANICAL_JOINT,
                        id,
                        id + " is a grounding electrode conductor and has a mechanical joint.",
                        "Run it unbroken, or join it by exothermic weld, irreversible compression or on a busbar."))
                : Optional.empty();
    }
}
