package org.bondspan.review;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Level;
import org.bondspan.site.Material;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/**
 * 250.64(A): aluminum is not buried, does not lie bare against earth or masonry, and does not end outdoors within 18 in
 * of the earth. A site draws no grade: the earth is taken to lie at the floor nearest to elevation 0. Whether aluminum
 * is bare and touches masonry no file tells; below the lowest floor it is asked.
 */
final class AluminumCheck implements ConductorCheck {
    private static final Length EIGHTEEN_INCHES = Length.ofInches(BigDecimal.valueOf(18));

    private final Ends ends;
    private final Site site;
    private final Length earth;
    private final Length lowest;

    AluminumCheck(SiteMetal metal, Ends ends) {
        this.ends = ends;
        this.site = metal.site();
        this.earth = floors().min(Comparator.comparing(floor -> floor.distanceTo(Length.ZERO)))
                .orElse(Length.ZERO);
        this.lowest = floors().min(Comparator.naturalOrder()).orElse(Length.ZERO);
    }

    private Stream<Length> floors() {
        return site.levels().stream().map(Level::floor);
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        if (conductor.material() != Material.ALUMINUM) {
            return Optional.empty();
        }
        String id = conductor.id();
        if (conductor.enclosure() == Enclosure.BURIED) {
            return offence(CheckedRule.ALUMINUM_PLACES, id, id + " is aluminum and buried.");
        }
        if (conductor.outdoors() && listEnds(conductor).anyMatch(end -> isBelow(end, earth.plus(EIGHTEEN_INCHES)))) {
            return offence(
                    CheckedRule.ALUMINUM_PLACES,
                    id,
                    id + " is aluminum and ends outdoors less than 18 in above the earth.");
        }
        boolean isDeep = Stream.concat(conductor.line().stream().map(List::of), listEnds(conductor))
                .anyMatch(places -> isBelow(places, lowest));
        return isDeep && conductor.enclosure() == Enclosure.NONE
                ? offence(
                        CheckedRule.ALUMINUM_BELOW,
                        id,
                        id + " is aluminum and runs below the lowest floor: bare against earth or masonry it is not"
                                + " permitted.")
                : Optional.empty();
    }

    /** Of each end the places that it can mean. */
    private Stream<List<Position>> listEnds(ProposedConductor conductor) {
        return Stream.of(conductor.from(), conductor.to()).map(end -> ends.list(conductor, end));
    }

    /** Wherever of them it is; not where nothing tells. */
    private boolean isBelow(List<Position> places, Length elevation) {
        return !places.isEmpty()
                && places.stream().allMatch(place -> site.elevation(place).isLessThan(elevation));
    }

    private static Optional<Offence> offence(CheckedRule check, String conductor, String found) {
        return Optional.of(new Offence(check, conductor, found, "Use copper there."));
    }
}
