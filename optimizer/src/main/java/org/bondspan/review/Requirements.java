package org.bondspan.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;

/** What the conductors of a proposal need. */
final class Requirements {
    private final PairVerdicts verdicts;
    private final BreakJumpers jumpers;
    private final Map<String, Optional<Requirement>> shared = new HashMap<>();

    Requirements(PairVerdicts verdicts, BreakJumpers jumpers) {
        this.verdicts = verdicts;
        this.jumpers = jumpers;
    }

    /** The need of a conductor that some pair, or a break in a pipe, has to rely on; empty where none does. */
    Optional<Requirement> find(ProposedConductor conductor) {
        return findShared(conductor).or(() -> jumpers.findRequirement(conductor));
    }

    /** The need of a conductor that some pair has to rely on. */
    Optional<Requirement> findShared(ProposedConductor conductor) {
        return shared.computeIfAbsent(
                conductor.id(),
                id -> Requirement.ofShared(
                        verdicts.along(id), verdict -> verdict.needs(Set.of(id)), conductor.material()));
    }

    /** The need of what several conductors between the same two ends make up together. */
    Optional<Requirement> findShared(List<ProposedConductor> twins) {
        Set<String> ids = twins.stream().map(ProposedConductor::id).collect(Collectors.toSet());
        Material material = twins.get(0).material();
        return Requirement.ofShared(verdicts.all(), verdict -> verdict.needs(ids), material);
    }

    /**
     * The largest need of what is not joined as it must be, toward all services: to mend that, any conductor may have
     * to have that size. Empty where everything is.
     */
    Optional<Requirement> findOutstanding(Material material) {
        Set<String> things = verdicts.all().stream()
                .filter(verdict -> !verdict.isLawful())
                .map(verdict -> verdict.pair().obligation().name())
                .collect(Collectors.toSet());
        return Requirement.ofShared(
                verdicts.all(),
                verdict -> things.contains(verdict.pair().obligation().name()),
                material);
    }

    /** The need of a jumper around a break; empty for any other conductor. */
    Optional<Requirement> findOfJumper(ProposedConductor conductor) {
        return jumpers.findRequirement(conductor);
    }

    /** The copper need that has to pass a ring. */
    Optional<Requirement> find(Node ring) {
        return Requirement.ofShared(verdicts.all(), verdict -> verdict.needs(ring), Material.COPPER);
    }

    /** The copper need that has to pass a stretch of an installed conductor. */
    Optional<Requirement> find(Span installed) {
        return Requirement.ofShared(verdicts.all(), verdict -> verdict.needs(installed), Material.COPPER);
    }

    /** The largest need of pairs whose best way is too small at that conductor. */
    Optional<PairVerdict> findFallingShort(ProposedConductor conductor) {
        return fallingShort(conductor).stream()
                .reduce((a, b) ->
                        a.pair().need(conductor.material()).isAtLeast(b.pair().need(conductor.material())) ? a : b);
    }

    private List<PairVerdict> fallingShort(ProposedConductor conductor) {
        return verdicts.along(conductor.id()).stream()
                .filter(verdict -> verdict.pair().shortfall(conductor) > 0)
                .toList();
    }
}
