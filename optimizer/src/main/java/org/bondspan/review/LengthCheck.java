package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** A stated length below what the line or the ends need. */
final class LengthCheck implements ConductorCheck {
    private final Ends ends;
    private final LengthUnit unit;

    LengthCheck(Ends ends, LengthUnit unit) {
        this.ends = ends;
        this.unit = unit;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        if (conductor.length().isEmpty()) {
            return Optional.empty();
        }
        Length stated = conductor.length().get();
        Length line = ends.measured(conductor);
        Length straight = ends.straightDistance(conductor).orElse(Length.ZERO);
        boolean byLine = straight.isLessThan(line);
        Length least = byLine ? line : straight;
        if (!isBelow(stated, least)) {
            return Optional.empty();
        }
        String what = byLine ? "its line measures " : "its ends lie apart by ";
        return Optional.of(new Offence(
                CheckedRule.LENGTH_TOO_SHORT,
                conductor.id(),
                conductor.id() + " is stated as " + Numbers.print(stated, unit) + ", but " + what
                        + Numbers.print(least, unit) + ".",
                "Correct the length."));
    }

    /** Below by more than the rounding of written numbers: half of 0.01 on the length and on each place of the line. */
    private boolean isBelow(Length stated, Length least) {
        long rounding = unit.nanometres() / 50;
        return stated.plus(Length.ofNanometres(rounding)).isLessThan(least);
    }
}
