package org.bondspan.review;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** A stated length below what the drawn line or the distance between the ends needs. */
final class LengthCheck implements ConductorCheck {
    private final Ends ends;
    private final LengthUnit unit;
    private final Length mostSaved;

    LengthCheck(Ends ends, SiteMetal metal) {
        this.ends = ends;
        this.unit = metal.site().lengthUnit();
        this.mostSaved = metal.measuredLines().mostSaved();
    }

    /** What a conductor has to be at least as long as, in words. */
    private record Least(Length length, String words) {}

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        return conductor
                .length()
                .flatMap(stated -> findMissed(conductor, stated).map(least -> tooShort(conductor.id(), stated, least)));
    }

    private Optional<Least> findMissed(ProposedConductor conductor, Length stated) {
        return Stream.of(
                        new Least(ends.measured(conductor), "its line measures "),
                        new Least(
                                leastDistance(conductor),
                                mostSaved.isZero() ? "its ends lie apart by " : "its ends need at least "),
                        new Least(ends.furthestTap(conductor), "it is tapped at "))
                .filter(least -> isBelow(stated, least.length))
                .max(Comparator.comparing(Least::length));
    }

    /** What to reckon with in place of a length that is stated too short: as if it stated none, its taps included. */
    Optional<Length> findNeeded(ProposedConductor conductor) {
        Length unstated = ends.unstatedLength(conductor).orElse(Length.ZERO);
        return conductor
                .length()
                .flatMap(stated -> findMissed(conductor, stated))
                .map(Least::length)
                .map(least -> least.isLessThan(unstated) ? unstated : least);
    }

    private Offence tooShort(String id, Length stated, Least least) {
        return new Offence(
                CheckedRule.LENGTH_TOO_SHORT,
                id,
                id + " is stated as " + Numbers.print(stated, unit) + ", but " + least.words
                        + Numbers.print(least.length, unit) + ".",
                "Correct the length.");
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
