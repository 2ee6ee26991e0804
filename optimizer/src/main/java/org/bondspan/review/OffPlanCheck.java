package org.bondspan.review;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** A line through a closed area, or outside the outline, away from the lines drawn for copper. */
final class OffPlanCheck implements ConductorCheck {
    private final CopperPlan plan;
    private final LengthUnit unit;

    OffPlanCheck(CopperPlan plan, LengthUnit unit) {
        this.plan = plan;
        this.unit = unit;
    }

    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        List<Position> line = conductor.line();
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            Optional<String> fault =
                    a.level().equals(b.level()) ? plan.findFault(a.level(), a.at(), b.at()) : Optional.empty();
            if (fault.isPresent()) {
                return Optional.of(offence(conductor, a.at(), b.at(), fault.get()));
            }
        }
        return Optional.empty();
    }

    private Offence offence(ProposedConductor conductor, PlanPoint a, PlanPoint b, String fault) {
        return new Offence(
                CheckedRule.OFF_THE_PLAN,
                conductor.id(),
                "The run of " + conductor.id() + " from " + print(a) + " to " + print(b) + " " + fault + ".",
                "Show that copper may run there, or lead it round.");
    }

    private String print(PlanPoint at) {
        return "(" + print(at.x()) + ", " + print(at.y()) + ")";
    }

    private String print(long coordinate) {
        return Numbers.rounded(Length.ofNanometres(coordinate).in(unit)).toPlainString();
    }
}
