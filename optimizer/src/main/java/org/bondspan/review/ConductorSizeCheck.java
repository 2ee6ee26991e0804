package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.Material;

/** 250.66, 310.10(G): conductors smaller than their need, or side by side in place of one; larger than needed. */
final class ConductorSizeCheck {
    private final Requirements requirements;
    private final Twins twins;

    ConductorSizeCheck(Requirements requirements, Twins twins) {
        this.requirements = requirements;
        this.twins = twins;
    }

    Optional<Offence> find(ProposedConductor conductor) {
        List<ProposedConductor> alike = twins.of(conductor);
        return alike.size() > 1 ? findSideBySide(conductor, alike) : findAlone(conductor);
    }

    /** The first of several between the same two ends stands for all. */
    private Optional<Offence> findSideBySide(ProposedConductor conductor, List<ProposedConductor> alike) {
        if (!alike.get(0).equals(conductor)) {
            return Optional.empty();
        }
        return requirements
                .findShared(alike)
                .filter(need -> alike.stream().noneMatch(each -> each.size().isAtLeast(need.size())))
                .map(need -> sideBySide(conductor, need));
    }

    private Optional<Offence> findAlone(ProposedConductor conductor) {
        Optional<Requirement> shared = requirements.findShared(conductor);
        Optional<PairVerdict> verdict = requirements.findFallingShort(conductor);
        boolean small =
                shared.map(need -> !conductor.size().isAtLeast(need.size())).orElse(false);
        if (small) {
            return shared.map(need -> tooSmall(conductor, need));
        }
        if (verdict.isPresent()) {
            Requirement need = Requirement.of(verdict.get().pair(), conductor.material());
            return Optional.of(
                    isSideBySide(verdict.get(), conductor) ? sideBySide(conductor, need) : tooSmall(conductor, need));
        }
        return requirements
                .find(conductor)
                .filter(need -> !need.size().isAtLeast(conductor.size()))
                .filter(need -> isEnoughForAll(need, conductor.material()))
                .map(need -> larger(conductor, need));
    }

    /** Nobody is told to make smaller what may be needed once something else is mended. */
    private boolean isEnoughForAll(Requirement need, Material material) {
        return requirements
                .findOutstanding(material)
                .map(outstanding -> need.size().isAtLeast(outstanding.size()))
                .orElse(true);
    }

    /** Another way just as small leads round the conductor, in copper alone. */
    private static boolean isSideBySide(PairVerdict verdict, ProposedConductor conductor) {
        Way way = verdict.best().orElseThrow();
        return verdict.findRound(Set.of(conductor.id()))
                .map(round -> isCopperAlone(round, Set.copyOf(way.nodes())))
                .orElse(false);
    }

    private static boolean isCopperAlone(Way round, Set<Node> shared) {
        return round.nodes().stream().allMatch(node -> shared.contains(node) || node.kind() == Kind.COPPER);
    }

    static Offence tooSmall(ProposedConductor conductor, Requirement need) {
        return new Offence(
                CheckedRule.CONDUCTOR_TOO_SMALL,
                conductor.id(),
                conductor.id() + " is " + describe(conductor) + "; from " + need.toward() + " it needs "
                        + need.size().label() + " " + conductor.material().label() + ".",
                "Make it " + need.size().label() + ".");
    }

    private static Offence sideBySide(ProposedConductor conductor, Requirement need) {
        return new Offence(
                CheckedRule.SIDE_BY_SIDE,
                conductor.id(),
                conductor.id() + ", " + describe(conductor) + ", lies side by side with another as small; from "
                        + need.toward() + " one conductor of " + need.size().label() + " is needed.",
                "Run one conductor of " + need.size().label() + " in place of them.");
    }

    private static Offence larger(ProposedConductor conductor, Requirement need) {
        return new Offence(
                CheckedRule.LARGER_THAN_NEEDED,
                conductor.id(),
                conductor.id() + " is " + describe(conductor) + "; from " + need.toward() + " "
                        + need.size().label() + " is enough.",
                "Make it " + need.size().label() + " to save copper.");
    }

    static String describe(ProposedConductor conductor) {
        return conductor.size().label() + " " + conductor.material().label();
    }
}
