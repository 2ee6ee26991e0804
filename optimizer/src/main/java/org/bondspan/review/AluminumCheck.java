package org.bondspan.review;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Level;
import org.bondspan.site.Material;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/**
 * 250.64(A): aluminum is not buried, and does not end outdoors within 18 in of the earth. A site draws no grade: the
 * earth is taken to lie at the floor nearest to elevation 0.
 */
final class AluminumCheck implements ConductorCheck {
    private static final Length EIGHTEEN_INCHES = Length.ofInches(BigDecimal.valueOf(18));

    private final Ends ends;
    private final Site site;
    private final Length earth;

    AluminumCheck(SiteMetal metal, Ends ends) {
        this.ends = ends;
        this.site = metal.site();
        this.earth = site.levels().stream()
                .map(Level::floor)
                .min(Comparator.comparing(floor -> floor.distanceTo(Length.ZERO)))
                .orElse(Length.ZERO);
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        if (conductor.material() != Material.ALUMINUM) {
            return Optional.empty();
        }
        if (conductor.enclosure() == Enclosure.BURIED) {
            return Optional.of(offence(conductor, conductor.id() + " is aluminum and buried."));
        }
        boolean low = conductor.outdoors()
                && Stream.of(conductor.from(), conductor.to())
                        .flatMap(end -> ends.find(conductor, end).stream())
                        .map(site::elevation)
                        .anyMatch(elevation -> elevation.minus(earth).isLessThan(EIGHTEEN_INCHES));
        return low
                ? Optional.of(offence(
                        conductor, conductor.id() + " is aluminum and ends outdoors less than 18 in above the earth."))
                : Optional.empty();
    }

    private static Offence offence(ProposedConductor conductor, String found) {
        return new Offence(CheckedRule.ALUMINUM_PLACES, conductor.id(), found, "Use copper there.");
    }
}
