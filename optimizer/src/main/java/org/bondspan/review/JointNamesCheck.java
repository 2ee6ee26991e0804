package org.bondspan.review;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.SitePath.InstalledConductor;

/** A joint of conductors that neither the proposal nor the site has. */
final class JointNamesCheck {
    private final Set<String> known = new HashSet<>();

    JointNamesCheck(SiteMetal metal) {
        metal.site().listPaths(InstalledConductor.class).forEach(conductor -> known.add(conductor.id()));
    }

    List<Offence> find(Proposal proposal) {
        Set<String> here = new HashSet<>(known);
        proposal.conductors().stream().map(ProposedConductor::id).forEach(here::add);
        return proposal.joints().stream()
                .flatMap(joint -> joint.conductors().stream())
                .filter(id -> !here.contains(id))
                .distinct()
                .map(id -> new Offence(
                        CheckedRule.JOINT_OF_NOTHING,
                        id,
                        "A joint names " + id + ", which is no conductor of the proposal or the site.",
                        "Add the conductor, or take it out of the joint."))
                .toList();
    }
}
