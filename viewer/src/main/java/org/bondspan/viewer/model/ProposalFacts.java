package org.bondspan.viewer.model;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.JudgedWay;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.viewer.state.Plan;
import org.bondspan.viewer.state.Reviewed;

/** The facts about conductors of a proposal, and about what it connects. */
final class ProposalFacts {
    private final Reviewed review;
    private final Wording wording;

    ProposalFacts(Reviewed review, Plan plan) {
        this.review = review;
        this.wording = Wording.of(plan.site());
    }

    Optional<FactSheet> find(String id) {
        return FactSheets.first(review.proposal().conductors(), ProposedConductor::id, id)
                .map(this::conductor)
                .or(() -> findThing(id));
    }

    private FactSheet conductor(ProposedConductor conductor) {
        Optional<JudgedConductor> judged =
                FactSheets.first(review.outcome().conductors(), JudgedConductor::id, conductor.id());
        return new FactSheet.Writer(
                        conductor.id() + "  " + conductor.size().label(),
                        "proposed conductor, " + conductor.material().label())
                .fact(
                        "needed",
                        judged.flatMap(JudgedConductor::needed)
                                .map(size ->
                                        size.label() + (conductor.material() == Material.COPPER ? "" : " aluminum"))
                                .orElse("no size: nothing relies on it"))
                .fact("for", judged.map(JudgedConductor::neededFor).orElse(""))
                .fact(
                        "length",
                        judged.flatMap(JudgedConductor::length).map(wording::of).orElse("not known"))
                .fact("from", wording.of(conductor.from()))
                .fact("to", wording.of(conductor.to()))
                .fact(
                        "protection",
                        conductor.enclosure().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .fact("thinnest of", thinnest(conductor.id()))
                .fact("run", wording.of(conductor.line()))
                .sheet();
    }

    private String thinnest(String id) {
        return review.outcome().ways().stream()
                .filter(way -> way.thinnest().equals(Optional.of(id)))
                .map(way -> "the way from " + way.service() + " to " + way.thing())
                .collect(Collectors.joining("\n"));
    }

    private Optional<FactSheet> findThing(String id) {
        var ways = review.outcome().ways().stream()
                .filter(way -> way.thing().equals(id))
                .toList();
        if (ways.isEmpty()) {
            return Optional.empty();
        }
        FactSheet.Writer writer = new FactSheet.Writer(id, "to be connected");
        for (JudgedWay way : ways) {
            writer.fact("from " + way.service(), way.lawful() ? "lawful and large enough" : "no sufficient lawful way");
            writer.fact("passes", String.join(", ", way.passes()));
            writer.fact("thinnest", way.thinnest().orElse(""));
        }
        return Optional.of(writer.sheet());
    }
}
