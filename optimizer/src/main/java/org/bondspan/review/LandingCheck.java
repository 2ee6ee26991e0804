package org.bondspan.review;

import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.code.Carrier;
import org.bondspan.layout.End;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.units.Numbers;

/** A landing on water pipe that tells not how far in; it is taken to lie where the pipe may be used. */
final class LandingCheck implements ConductorCheck {
    private final SiteMetal metal;
    private final Ends ends;

    LandingCheck(SiteMetal metal, Ends ends) {
        this.metal = metal;
        this.ends = ends;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        return Stream.of(conductor.from(), conductor.to())
                .filter(End.OnPath.class::isInstance)
                .map(End.OnPath.class::cast)
                .filter(end -> ends.findDistance(conductor, end).isEmpty())
                .flatMap(end -> metal.findCarrier(end.path()).stream())
                .filter(Carrier.Pipe.class::isInstance)
                .map(Carrier.Pipe.class::cast)
                .filter(UnlawfulLinks::isPartlyUsable)
                .map(pipe -> notStated(conductor, pipe))
                .findFirst();
    }

    private Offence notStated(ProposedConductor conductor, Carrier.Pipe pipe) {
        String limit = Numbers.print(pipe.usable(), metal.site().lengthUnit());
        return new Offence(
                CheckedRule.LANDING_NOT_STATED,
                conductor.id(),
                conductor.id() + " lands on " + pipe.path().id() + " at an unstated distance; it must lie within "
                        + limit + " of the point of entrance.",
                "State the distance along the pipe.");
    }
}
