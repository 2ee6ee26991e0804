package org.bondspan.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bondspan.code.StandingCautions;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Copper;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.LeastCopper;
import org.bondspan.layout.LengthFrom;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;
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

    private ReviewProposal(Site site) {
        this.site = site;
    }

    /** As {@link #of(Site, Proposal, RouteLimits)}, without limits. */
    public static ReviewOutcome of(Site site, Proposal proposal) {
        return of(site, proposal, RouteLimits.none());
    }

    /** The limits are for the search for the least copper; nothing that is found depends on it. */
    public static ReviewOutcome of(Site site, Proposal proposal, RouteLimits limits) {
        return new ReviewProposal(site).review(proposal, limits);
    }

    private ReviewOutcome review(Proposal proposal, RouteLimits limits) {
        Review review = new Reviewer(site).review(proposal);
        List<Finding> findings = review.findings();
        List<JudgedConductor> conductors = review.conductors();
        return new ReviewOutcome(
                !Finding.anyViolation(findings),
                findings,
                listNotChecked(proposal, conductors),
                findCopper(conductors),
                least(limits),
                site.lengthUnit(),
                conductors,
                review.ways(),
                StandingCautions.CAUTIONS,
                site.name(),
                site.adoption(),
                site.codeEdition(),
                site.evidence().stream().filter(Evidence::isAssumed).toList());
    }

    private LeastCopper least(RouteLimits limits) {
        try {
            return LeastCopper.of(RouteSite.of(site, limits));
        } catch (NothingFoundException nothing) {
            return LeastCopper.NOT_KNOWN;
        }
    }

    /**
     * Also what the proposal leaves open: bare aluminum, and runs not stated, stated too short, or not known at all.
     */
    private static List<String> listNotChecked(Proposal proposal, List<JudgedConductor> conductors) {
        List<String> list = new ArrayList<>(StandingCautions.NOT_CHECKED);
        Stream<String> aluminum = proposal.conductors().stream()
                .filter(conductor -> conductor.material() == Material.ALUMINUM)
                .filter(conductor -> conductor.enclosure() == Enclosure.NONE)
                .map(ProposedConductor::id);
        name("Whether aluminum lies bare against earth or masonry, 250.64(A): ", aluminum, list);
        name(
                "Runs of conductors that state neither length nor line, reckoned straight from end to end: ",
                reckoned(conductors, LengthFrom.ENDS),
                list);
        name(
                "Lengths stated below what line, ends or taps need, reckoned with what these need: ",
                reckoned(conductors, LengthFrom.NEEDED),
                list);
        name(
                "Lengths that nothing tells, for want of a length, a line, or ends whose places are known: ",
                reckoned(conductors, LengthFrom.NOTHING),
                list);
        return list;
    }

    private static Stream<String> reckoned(List<JudgedConductor> conductors, LengthFrom from) {
        return conductors.stream()
                .filter(conductor -> conductor.lengthFrom() == from)
                .map(JudgedConductor::id);
    }

    private static void name(String words, Stream<String> conductors, List<String> list) {
        String ids = conductors.collect(Collectors.joining(", "));
        if (!ids.isEmpty()) {
            list.add(words + ids + ".");
        }
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
