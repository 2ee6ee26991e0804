package org.bondspan.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.JointMeetings.Stray;
import org.bondspan.site.SitePath.InstalledConductor;

/** Joints that list conductors which do not exist, or which nothing leads there: they join nothing. */
final class JointCheck {
    private final JointMeetings joints;
    private final Set<String> known = new HashSet<>();

    JointCheck(SiteMetal metal, JointMeetings joints) {
        this.joints = joints;
        metal.site().listPaths(InstalledConductor.class).forEach(conductor -> known.add(conductor.id()));
    }

    List<Offence> find(Proposal proposal) {
        Set<String> here = new HashSet<>(known);
        proposal.conductors().stream().map(ProposedConductor::id).forEach(here::add);
        List<Offence> offences = new ArrayList<>();
        proposal.joints().stream()
                .flatMap(joint -> joint.conductors().stream())
                .filter(id -> !here.contains(id))
                .distinct()
                .forEach(id -> offences.add(new Offence(
                        CheckedRule.JOINT_OF_NOTHING,
                        id,
                        "A joint names " + id + ", which is no conductor of the proposal or the site.",
                        "Add the conductor, or take it out of the joint.")));
        joints.strays().forEach(stray -> offences.add(elsewhere(stray)));
        return offences;
    }

    private static Offence elsewhere(Stray stray) {
        String joint = stray.joint().id().map(id -> "Joint " + id).orElse("A joint");
        return new Offence(
                CheckedRule.JOINT_ELSEWHERE,
                stray.conductor(),
                joint + " lists " + stray.conductor()
                        + ", but no end and no drawn line says that it comes there: it is not joined.",
                "Let the end that taps it say so, as {\"conductor\": \"" + stray.conductor()
                        + "\", \"at\": 20}, or give the joint a place and " + stray.conductor()
                        + " a line past it, or take " + stray.conductor() + " out of the joint.");
    }
}
