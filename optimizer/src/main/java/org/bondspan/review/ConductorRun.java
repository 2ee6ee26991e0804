package org.bondspan.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.units.Length;

/**
 * One proposed conductor as it runs through a tie: from end to end by way of its taps and of the joints that list it.
 * What joins it at its very end is joined with what it lands on there, without any length of the conductor.
 */
final class ConductorRun {
    private final CopperNodes copper;
    private final List<JointStop> stops;
    private final Ends ends;
    private final ProposedConductor conductor;
    private final List<Offence> offences;
    private final List<Node> atStart = new ArrayList<>();
    private final List<Node> atFinish = new ArrayList<>();
    private final List<Stop> between = new ArrayList<>();

    /** Where something joins it on its way. */
    private record Stop(Node node, Length at) {}

    ConductorRun(
            CopperNodes copper, List<JointStop> stops, Ends ends, ProposedConductor conductor, List<Offence> offences) {
        this.copper = copper;
        this.stops = stops;
        this.ends = ends;
        this.conductor = conductor;
        this.offences = offences;
    }

    /** Adds its stretches to the tie. */
    void lay(Node first, Node last) {
        copper.taps(conductor.id()).forEach((at, tap) -> addTap(tap, at));
        stops.stream()
                .filter(stop -> stop.node() != first && stop.node() != last)
                .forEach(stop -> addJoint(stop, first, last));
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

    private void addJoint(JointStop stop, Node first, Node last) {
        switch (stop.where()) {
            case AT_FROM -> atStart.add(stop.node());
            case AT_TO -> atFinish.add(stop.node());
            case ON_FROM -> Span.touch(first, stop.node(), List.of());
            case ON_TO -> Span.touch(last, stop.node(), List.of());
            case BETWEEN -> between.add(new Stop(stop.node(), stop.at()));
        }
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
