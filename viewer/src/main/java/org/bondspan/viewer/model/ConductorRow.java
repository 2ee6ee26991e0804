package org.bondspan.viewer.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.JudgedConductor;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.Material;
import org.bondspan.units.Weight;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Plan;
import org.bondspan.viewer.state.Reviewed;

/**
 * A row of the conductor schedule.
 *
 * @param kind GEC, BJ or BC; of a proposal the needed size
 * @param weight empty text where it is not known
 */
public record ConductorRow(String id, String size, String kind, String length, String weight, String from, String to) {

    /** The rows of what is shown, in its order. */
    public static List<ConductorRow> rows(Desk desk) {
        return desk.plan()
                .map(plan -> desk.proposal().map(review -> of(review, plan)).orElseGet(() -> of(plan)))
                .orElse(List.of());
    }

    private static List<ConductorRow> of(Plan plan) {
        Wording wording = Wording.of(plan.site());
        return plan.conductors().stream()
                .map(conductor -> of(conductor, wording))
                .toList();
    }

    private static ConductorRow of(Conductor conductor, Wording wording) {
        return new ConductorRow(
                conductor.id(),
                conductor.size().label(),
                Wording.letters(conductor.role()),
                wording.of(conductor.length().total()),
                wording.of(Weight.of(conductor.size(), conductor.length().total())),
                wording.of(conductor.from()),
                wording.of(conductor.to()));
    }

    private static List<ConductorRow> of(Reviewed review, Plan plan) {
        Wording wording = Wording.of(plan.site());
        Map<String, JudgedConductor> judged = review.outcome().conductors().stream()
                .collect(Collectors.toMap(JudgedConductor::id, conductor -> conductor, (a, b) -> a));
        return review.proposal().conductors().stream()
                .map(conductor -> of(conductor, Optional.ofNullable(judged.get(conductor.id())), wording))
                .toList();
    }

    private static ConductorRow of(ProposedConductor conductor, Optional<JudgedConductor> judged, Wording wording) {
        boolean copper = conductor.material() == Material.COPPER;
        return new ConductorRow(
                conductor.id(),
                conductor.size().label() + (copper ? "" : " Al"),
                judged.flatMap(JudgedConductor::needed)
                        .map(size -> size.label())
                        .orElse("none"),
                judged.flatMap(JudgedConductor::length).map(wording::of).orElse(""),
                copper
                        ? judged.flatMap(JudgedConductor::length)
                                .map(length -> wording.of(Weight.of(conductor.size(), length)))
                                .orElse("")
                        : "",
                wording.of(conductor.from()),
                wording.of(conductor.to()));
    }
}
