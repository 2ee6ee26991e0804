package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.StandingCautions;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Copper;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.review.Review;
import org.bondspan.review.Reviewer;
import org.bondspan.site.Evidence;
import org.bondspan.site.Material;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.Weight;

/** Verifies a proposed route, and tells how much copper it takes beside the least. */
public final class ReviewProposal {
    private final Site site;
    private final Reviewer reviewer;
    private final Optional<Weight> least;

    private ReviewProposal(Site site) {
        this.site = site;
        this.reviewer = new Reviewer(site);
        this.least = RouteSite.of(site).copper().map(Copper::weight);
    }

    public static ReviewOutcome of(Site site, Proposal proposal) {
        return on(site).review(proposal);
    }

    /** For any number of proposals: the site is routed once. */
    public static ReviewProposal on(Site site) {
        return new ReviewProposal(site);
    }

    public ReviewOutcome review(Proposal proposal) {
        Review review = reviewer.review(proposal);
        List<Finding> findings = review.findings();
        List<JudgedConductor> conductors = review.conductors();
        return new ReviewOutcome(
                !Finding.anyViolation(findings),
                findings,
                listNotChecked(conductors),
                findCopper(conductors),
                least,
                site.lengthUnit(),
                conductors,
                review.ways(),
                StandingCautions.CAUTIONS,
                site.name(),
                site.adoption(),
                site.codeEdition(),
                site.evidence().stream().filter(Evidence::isAssumed).toList());
    }

    /** Also the runs that nobody stated, those stated too short, and those of which nothing is known. */
    private static List<String> listNotChecked(List<JudgedConductor> conductors) {
        List<String> list = new ArrayList<>(StandingCautions.NOT_CHECKED);
        list.addAll(name(
                conductors,
                LengthFrom.ENDS,
                "Runs of conductors that state neither length nor line, reckoned straight from end to end: "));
        list.addAll(name(
                conductors,
                LengthFrom.NEEDED,
                "Lengths stated below what line, ends or taps need, reckoned with what these need: "));
        list.addAll(name(
                conductors,
                LengthFrom.NOTHING,
                "Lengths that nothing tells, for want of a length, a line, or ends whose places are known: "));
        return list;
    }

    private static List<String> name(List<JudgedConductor> conductors, LengthFrom from, String words) {
        List<String> ids = conductors.stream()
                .filter(conductor -> conductor.lengthFrom() == from)
                .map(JudgedConductor::id)
                .toList();
        return ids.isEmpty() ? List.of() : List.of(words + String.join(", ", ids) + ".");
    }

    /** Copper conductors only; empty when the length of one of them is not known. */
    private Optional<Copper> findCopper(List<JudgedConductor> conductors) {
        Length length = Length.ZERO;
        Weight weight = Weight.ZERO;
        for (JudgedConductor conductor : conductors) {
            if (conductor.material() == Material.COPPER) {
                if (conductor.length().isEmpty()) {
                    return Optional.empty();
                }
                Length own = conductor.length().get();
                length = length.plus(own);
                weight = weight.plus(Weight.of(conductor.size(), own));
            }
        }
        return Optional.of(new Copper(length, weight, length.increasedBy(site.wastePercent())));
    }
}
