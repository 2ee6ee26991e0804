package org.bondspan.usecase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bondspan.code.StandingCautions;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.review.Review;
import org.bondspan.site.Material;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;

/** Verifies a proposed route, and tells how much copper it takes beside the least. */
public final class ReviewProposal {
    private ReviewProposal() {}

    public static ReviewOutcome of(Site site, Proposal proposal) {
        Review review = new Review(site, proposal);
        List<Finding> findings = review.findings();
        return new ReviewOutcome(
                !Finding.anyViolation(findings),
                findings,
                StandingCautions.NOT_CHECKED,
                findCopper(site, proposal, review.lengths()),
                RouteSite.of(site).copper().map(Copper::weight),
                site.lengthUnit(),
                review.conductors(),
                review.ways(),
                StandingCautions.CAUTIONS,
                site.name(),
                site.codeEdition());
    }

    /** Copper conductors only; empty when the length of one of them is not known. */
    private static Optional<Copper> findCopper(Site site, Proposal proposal, Map<ProposedConductor, Length> lengths) {
        Length length = Length.ZERO;
        Weight weight = Weight.ZERO;
        for (ProposedConductor conductor : proposal.conductors()) {
            if (conductor.material() == Material.COPPER) {
                Length own = lengths.get(conductor);
                if (own == null) {
                    return Optional.empty();
                }
                length = length.plus(own);
                weight = weight.plus(Weight.of(conductor.size(), own));
            }
        }
        return Optional.of(new Copper(length, weight, length.increasedBy(site.wastePercent())));
    }
}
