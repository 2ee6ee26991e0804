package org.bondspan.review;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.jgrapht.alg.util.UnionFind;

/** Whether the ends of the conductors of a joint already say that they meet: by its id, or by tapping one another. */
final class JointByEnds {
    private final ProposedJoint joint;
    private final UnionFind<String> met;

    private JointByEnds(ProposedJoint joint) {
        this.joint = joint;
        Set<String> meeting = new HashSet<>(joint.conductors());
        joint.id().ifPresent(meeting::add);
        this.met = new UnionFind<>(meeting);
    }

    static boolean isTold(ProposedJoint joint, Proposal proposal) {
        JointByEnds told = new JointByEnds(joint);
        List<ProposedConductor> listed = proposal.conductors().stream()
                .filter(conductor -> joint.conductors().contains(conductor.id()))
                .toList();
        listed.forEach(
                conductor -> Stream.of(conductor.from(), conductor.to()).forEach(end -> told.add(conductor.id(), end)));
        Set<String> groups = new HashSet<>();
        listed.forEach(conductor -> groups.add(told.met.find(conductor.id())));
        return groups.size() < 2;
    }

    private void add(String conductor, End end) {
        if (end instanceof End.AtJoint at
                && joint.id().filter(at.joint()::equals).isPresent()) {
            met.union(conductor, at.joint());
        } else if (end instanceof End.OnConductor on && joint.conductors().contains(on.conductor())) {
            met.union(conductor, on.conductor());
        } else if (end instanceof End.OnPath on && joint.conductors().contains(on.path())) {
            met.union(conductor, on.path());
        }
    }
}
