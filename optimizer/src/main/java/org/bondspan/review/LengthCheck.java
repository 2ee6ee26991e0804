package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** A stated length below what the drawn line or the distance between the ends needs. */
final class LengthCheck implements ConductorCheck {
    private final Ends ends;
    private final LengthUnit unit;
    private final Length mostSaved;

    LengthCheck(Ends ends, Site site) {
        this.ends = ends;
        this.unit = site.lengthUnit();
        this.mostSaved = ends.mostSaved();
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        if (conductor.length().isEmpty()) {
            return Optional.empty();
        }
        Length stated = conductor.length().get();
        Length line = ends.measured(conductor);
        Length apart = leastDistance(conductor);
        boolean byLine = !line.isLessThan(apart);
        Length least = byLine ? line : apart;
        if (!isBelow(stated, least)) {
            return Optional.empty();
        }
        String what = byLine ? "its line measures " : mostSaved.isZero() ? "its ends lie apart by " : "its ends need at least ";
        return Optional.of(new Offence(
                CheckedRule.LENGTH_TOO_SHORT,
                conductor.id(),
                conductor.id() + " is stated as " + Numbers.print(stated, unit) + ", but " + what
                        + Numbers.print(least, unit) + ".",
                "Correct the length."));
    }

    /** Straight between the ends, less what lines measured shorter than they are drawn may save. */
    private Length leastDistance(ProposedConductor conductor) {
        Length straight = ends.straightDistance(conductor).orElse(Length.ZERO);
        return mostSaved.isLessThan(straight) ? straight.minus(mostSaved) : Length.ZERO;
    }

    /** Below by more than the rounding of written numbers: half of 0.01 on the length and on each place of the line. */
    private boolean isBelow(Length stated, Length least) {
        long rounding = unit.nanometres() / 50;
        return stated.plus(Length.ofNanometres(rounding)).isLessThan(least);
    }
}
