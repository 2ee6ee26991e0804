package org.bondspan.review;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.JointMethod;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.layout.Proposal.ProposedLink;
import org.bondspan.site.Material;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * A proposal with one thing broken.
 *
 * @param what was done, for the message of a failing test
 * @param expected what the review has to name, as section and subject
 */
record Mutant(String what, Proposal proposal, String expected) {
    static Proposal without(Proposal proposal, ProposedConductor conductor) {
        List<ProposedConductor> rest = new ArrayList<>(proposal.conductors());
        rest.remove(conductor);
        return new Proposal(rest, proposal.links(), proposal.joints());
    }

    static Proposal replacing(
            Proposal proposal, ProposedConductor conductor, UnaryOperator<ProposedConductor> replacement) {
        List<ProposedConductor> conductors = new ArrayList<>(proposal.conductors());
        conductors.replaceAll(each -> each.equals(conductor) ? replacement.apply(each) : each);
        return new Proposal(conductors, proposal.links(), proposal.joints());
    }

    static Mutant oneSizeDown(Proposal proposal, ProposedConductor conductor) {
        return new Mutant(
                conductor.id() + " one size down",
                replacing(proposal, conductor, old -> sized(old, old.id(), smaller(old.size()))),
                "250.66 " + conductor.id());
    }

    static WireSize smaller(WireSize size) {
        return Arrays.stream(WireSize.values())
                .filter(candidate -> !candidate.isAtLeast(size))
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static ProposedConductor sized(ProposedConductor old, String id, WireSize size) {
        return new ProposedConductor(
                id,
                size,
                old.material(),
                old.from(),
                old.to(),
                old.line(),
                old.length(),
                Enclosure.RACEWAY,
                old.exposedToDamage(),
                old.outdoors(),
                old.bothEndsBonded());
    }

    static Mutant twoSideBySide(Proposal proposal, ProposedConductor conductor) {
        WireSize size = smaller(conductor.size());
        Proposal one = replacing(proposal, conductor, old -> sized(old, old.id(), size));
        List<ProposedConductor> two = new ArrayList<>(one.conductors());
        two.add(sized(conductor, "Twin", size));
        return new Mutant(
                conductor.id() + " as two smaller ones",
                new Proposal(two, one.links(), one.joints()),
                "310.10(G) " + conductor.id());
    }

    static Mutant inAluminum(Proposal proposal, ProposedConductor conductor) {
        return new Mutant(
                conductor.id() + " in aluminum",
                replacing(
                        proposal,
                        conductor,
                        old -> new ProposedConductor(
                                old.id(),
                                old.size(),
                                Material.ALUMINUM,
                                old.from(),
                                old.to(),
                                old.line(),
                                old.length(),
                                old.enclosure(),
                                old.exposedToDamage(),
                                old.outdoors(),
                                old.bothEndsBonded())),
                "250.66 " + conductor.id());
    }

    static Mutant withoutRaceway(Proposal proposal, ProposedConductor conductor) {
        return new Mutant(
                conductor.id() + " without raceway",
                replacing(proposal, conductor, old -> enclosed(old, Enclosure.NONE)),
                "250.64(B) " + conductor.id());
    }

    static Mutant inFerrousRaceway(Proposal proposal, ProposedConductor conductor) {
        return new Mutant(
                conductor.id() + " in ferrous raceway that is not bonded",
                replacing(proposal, conductor, old -> enclosed(old, Enclosure.FERROUS_RACEWAY)),
                "250.64(E) " + conductor.id());
    }

    private static ProposedConductor enclosed(ProposedConductor old, Enclosure enclosure) {
        return new ProposedConductor(
                old.id(),
                old.size(),
                old.material(),
                old.from(),
                old.to(),
                old.line(),
                old.length(),
                enclosure,
                old.exposedToDamage(),
                old.outdoors(),
                old.bothEndsBonded());
    }

    /** The landing on that pipe moved to that distance; its drawn line is left out. */
    static Mutant furtherIn(Proposal proposal, ProposedConductor conductor, String pipe, Length distance) {
        End there = new End.OnPath(pipe, Optional.of(distance));
        return new Mutant(
                conductor.id() + " further in",
                replacing(
                        proposal,
                        conductor,
                        old -> new ProposedConductor(
                                old.id(),
                                old.size(),
                                old.material(),
                                isOn(old.from(), pipe) ? there : old.from(),
                                isOn(old.to(), pipe) ? there : old.to(),
                                List.of(),
                                old.length(),
                                old.enclosure(),
                                old.exposedToDamage(),
                                old.outdoors(),
                                old.bothEndsBonded())),
                "250.68(C)(1) " + pipe);
    }

    static boolean isOn(End end, String path) {
        return end instanceof End.OnPath on && on.path().equals(path);
    }

    static Mutant throughMetal(Proposal proposal, ProposedConductor conductor, String path, String rule) {
        Proposal rest = without(proposal, conductor);
        List<ProposedLink> links = new ArrayList<>(rest.links());
        links.add(new ProposedLink(path, conductor.from(), conductor.to()));
        return new Mutant(
                "link through " + path + " in place of " + conductor.id(),
                new Proposal(rest.conductors(), links, rest.joints()),
                rule + " " + path);
    }

    static Mutant mechanical(Proposal proposal, ProposedJoint joint, String conductor) {
        List<ProposedJoint> joints = new ArrayList<>(proposal.joints());
        joints.replaceAll(each -> each.equals(joint)
                ? new ProposedJoint(each.id(), each.place(), each.conductors(), JointMethod.MECHANICAL)
                : each);
        return new Mutant(
                "mechanical joint of " + joint.conductors(),
                new Proposal(proposal.conductors(), proposal.links(), joints),
                "250.64(C) " + conductor);
    }
}
