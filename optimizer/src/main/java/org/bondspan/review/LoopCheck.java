package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.Node.Kind;

/** A conductor whose two ends are one: its copper joins nothing. */
final class LoopCheck implements ConductorCheck {
    private final ProposedTie tie;
    private final BreakJumpers jumpers;

    LoopCheck(ProposedTie tie, BreakJumpers jumpers) {
        this.tie = tie;
        this.jumpers = jumpers;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        List<Node> ends = tie.ends(conductor);
        Node node = ends.get(0);
        boolean isLoop = node == ends.get(1) && !mayBeInParts(node) && !jumpers.isAroundBreak(conductor);
        return isLoop ? Optional.of(offence(conductor, node)) : Optional.empty();
    }

    /** Metal that may not carry, such as a frame of several parts, may be what the conductor is to join. */
    private static boolean mayBeInParts(Node node) {
        return node.kind() == Kind.PATH && !node.offences().isEmpty();
    }

    private static Offence offence(ProposedConductor conductor, Node node) {
        String where = node.kind() == Kind.COPPER ? "one place" : node.id();
        return new Offence(
                CheckedRule.LOOP,
                conductor.id(),
                conductor.id() + " begins and ends at " + where + ": its copper joins nothing.",
                "Correct an end, or leave it out.");
    }
}
