package org.bondspan.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.Proposal.ProposedJoint;
import org.bondspan.review.Node.Kind;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/**
 * One proposed conductor as it runs through a tie: from end to end by way of its taps and of the joints that list it.
 * What joins it at its very end is joined with what it lands on there, without any length of the conductor.
 */
final class ConductorRun {
    private final CopperNodes copper;
    private final Ends ends;
    private final ProposedConductor conductor;
    private final List<Offence> offences;
    private final List<Node> atStart = new ArrayList<>();
    private final List<Node> atFinish = new ArrayList<>();
    private final List<Stop> between = new ArrayList<>();

    /** Where something joins it on its way. */
    private record Stop(Node node, Length at) {}

    ConductorRun(CopperNodes copper, Ends ends, ProposedConductor conductor, List<Offence> offences) {
        this.copper = copper;
        this.ends = ends;
        this.conductor = conductor;
        this.offences = offences;
    }

    /** Adds its stretches to the tie. */
    void lay(Node first, Node last) {
        copper.taps(conductor.id()).forEach((at, tap) -> addTap(tap, at));
        copper.joints(conductor.id())
                .forEach(joint -> copper.find(joint)
                        .filter(node -> node != first && node != last)
                        .ifPresent(node -> addJoint(node, joint, first.kind() == Kind.COPPER)));
        run(touchAll(first, atStart), touchAll(last, atFinish));
    }

    private void addTap(Node tap, Length at) {
        boolean full =
                ends.length(conductor).map(length -> !at.isLessThan(length)).orElse(false);
        if (at.isZero()) {
            atStart.add(tap);
        } else if (full) {
            atFinish.add(tap);
        } else {
            between.add(new Stop(tap, at));
        }
    }

    /**
     * It lies where its place is on the drawn line; one that tells no place lies anywhere before the taps. Where the
     * line begins and ends at one place, it lies at the end that is in copper.
     */
    private void addJoint(Node node, ProposedJoint joint, boolean startsInCopper) {
        List<Position> line = conductor.line();
        Optional<Position> place = joint.place().filter(at -> !line.isEmpty());
        boolean begins = place.filter(at -> CopperNodes.isSame(line.get(0), at)).isPresent();
        boolean ends = place.filter(at -> CopperNodes.isSame(line.get(line.size() - 1), at))
                .isPresent();
        if (begins && (!ends || startsInCopper)) {
            atStart.add(node);
        } else if (ends) {
            atFinish.add(node);
        } else {
            between.add(new Stop(node, place.flatMap(this::findAlong).orElse(Length.ZERO)));
        }
    }

    private Optional<Length> findAlong(Position place) {
        return ends.findAlong(conductor, place);
    }

    private static Node touchAll(Node end, List<Node> joined) {
        Node outermost = end;
        for (Node node : joined) {
            Span.touch(outermost, node, List.of());
            outermost = node;
        }
        return outermost;
    }

    private void run(Node start, Node finish) {
        between.sort(Comparator.comparing(Stop::at));
        Node before = start;
        Length run = Length.ZERO;
        for (Stop stop : between) {
            Span.run(before, stop.node, conductor, Optional.of(stop.at.minus(run)), offences);
            before = stop.node;
            run = stop.at;
        }
        Length passed = run;
        Optional<Length> rest =
                ends.length(conductor).map(whole -> passed.isLessThan(whole) ? whole.minus(passed) : Length.ZERO);
        Span.run(before, finish, conductor, rest, offences);
    }
}
