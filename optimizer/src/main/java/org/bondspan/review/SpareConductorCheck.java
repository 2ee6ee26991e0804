package org.bondspan.review;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.Node.Kind;

/** 250.66: a conductor that nothing relies on, and that is too small for anything that it lands on. */
final class SpareConductorCheck implements ConductorCheck {
    private final PairVerdicts verdicts;
    private final Requirements requirements;

    SpareConductorCheck(PairVerdicts verdicts, Requirements requirements) {
        this.verdicts = verdicts;
        this.requirements = requirements;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        Optional<Requirement> ofJumper = requirements.findOfJumper(conductor);
        if (ofJumper.isPresent()) {
            return ofJumper.filter(need -> !conductor.size().isAtLeast(need.size()))
                    .map(need -> ConductorSizeCheck.tooSmall(conductor, need));
        }
        boolean reliedOn = requirements.findShared(conductor).isPresent()
                || requirements.findFallingShort(conductor).isPresent();
        return reliedOn ? Optional.empty() : findTooSmallAnywhere(conductor);
    }

    private Optional<Offence> findTooSmallAnywhere(ProposedConductor conductor) {
        Set<Node> landed = landedOn(conductor);
        List<PairVerdict> beside = verdicts.all().stream()
                .filter(verdict -> landed.stream().anyMatch(verdict::isGoal))
                .toList();
        if (!beside.stream().allMatch(PairVerdict::isLawful)) {
            return Optional.empty();
        }
        return beside.stream()
                .map(verdict -> Requirement.of(verdict.pair(), conductor.material()))
                .reduce((a, b) -> b.size().isAtLeast(a.size()) ? a : b)
                .filter(need -> !conductor.size().isAtLeast(need.size()))
                .map(need -> ConductorSizeCheck.tooSmall(conductor, need));
    }

    /** The metal that the conductor reaches in copper, itself and what is joined to it. */
    private Set<Node> landedOn(ProposedConductor conductor) {
        Set<Node> seen = new LinkedHashSet<>();
        Deque<Node> open = new ArrayDeque<>(verdicts.tie().ends(conductor));
        while (!open.isEmpty()) {
            Node node = open.remove();
            if (seen.add(node) && node.kind() == Kind.COPPER) {
                node.spans().stream().map(span -> span.other(node)).forEach(open::add);
            }
        }
        return seen;
    }
}
