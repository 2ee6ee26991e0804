package org.bondspan.review;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** A stated length below what the drawn line or the distance between the ends needs. */
final class LengthCheck implements ConductorCheck {
    private final Ends ends;
    private final LengthUnit unit;
    private final boolean mayBeShorter;

    LengthCheck(Ends ends, Site site) {
        this.ends = ends;
        this.unit = site.lengthUnit();
        this.mayBeShorter = site.listPaths(CopperLine.class).stream()
                .anyMatch(line -> line.measured()
                        .map(measured -> measured.isLessThan(LineLengths.of(line.line())))
                        .orElse(false));
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        if (conductor.length().isEmpty()) {
            return Optional.empty();
        }
        Length stated = conductor.length().get();
        Length line = ends.measured(conductor);
        Length apart = straightDistance(conductor);
        boolean byLine = !line.isLessThan(apart);
        Length least = byLine ? line : apart;
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

    /** Nothing can be said where a measured line may be shorter than it is drawn. */
    private Length straightDistance(ProposedConductor conductor) {
        return mayBeShorter ? Length.ZERO : ends.straightDistance(conductor).orElse(Length.ZERO);
    }

    /** Below by more than the rounding of written numbers: half of 0.01 on the length and on each place of the line. */
    private boolean isBelow(Length stated, Length least) {
        long rounding = unit.nanometres() / 50;
        return stated.plus(Length.ofNanometres(rounding)).isLessThan(least);
    }
}
