package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.layout.Protection;
import org.bondspan.site.Material;

/** Turns an answer into the proposal that it is. */
final class Proposals {
    private Proposals() {}

    static Proposal of(Layout layout) {
        List<ProposedConductor> conductors =
                layout.conductors().stream().map(Proposals::conductor).toList();
        List<ProposedLink> links = layout.links().stream()
                .map(link -> new ProposedLink(link.path(), link.from(), link.to()))
                .toList();
        List<ProposedJoint> joints = layout.joints().stream()
                .map(joint -> new ProposedJoint(
                        Optional.of(joint.id()),
                        Optional.of(joint.place()),
                        joint.conductors(),
                        joint.method().equals("busbar") ? JointMethod.BUSBAR : JointMethod.EXOTHERMIC))
                .toList();
        return new Proposal(conductors, links, joints);
    }

    private static ProposedConductor conductor(Conductor conductor) {
        return new ProposedConductor(
                conductor.id(),
                conductor.size(),
                Material.COPPER,
                conductor.from(),
                conductor.to(),
                conductor.line(),
                Optional.of(conductor.length().total()),
                conductor.protection() == Protection.RACEWAY ? Enclosure.RACEWAY : Enclosure.NONE,
                false,
                false,
                false);
    }
}
