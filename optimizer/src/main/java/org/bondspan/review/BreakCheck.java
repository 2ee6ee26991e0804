package org.bondspan.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.review.BreakJumpers.OpenBreak;
import org.bondspan.site.Material;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/**
 * 250.53(D)(1): every break of a pipe that must be connected has a lawful jumper around it, of the size of the pipe's
 * bond.
 */
final class BreakCheck {
    private final BreakJumpers jumpers;
    private final LengthUnit unit;
    private final Function<ProposedConductor, List<Offence>> offences;

    /** @param offences what is unlawful about a conductor whatever its size */
    BreakCheck(BreakJumpers jumpers, LengthUnit unit, Function<ProposedConductor, List<Offence>> offences) {
        this.jumpers = jumpers;
        this.unit = unit;
        this.offences = offences;
    }

    List<Offence> find() {
        return jumpers.breaks().stream().flatMap(open -> find(open).stream()).toList();
    }

    private List<Offence> find(OpenBreak open) {
        List<ProposedConductor> around = jumpers.around(open);
        if (around.isEmpty()) {
            return List.of(missing(open));
        }
        List<List<Offence>> wrong =
                around.stream().map(conductor -> wrong(conductor, open)).toList();
        return wrong.stream().anyMatch(List::isEmpty) ? List.of() : wrong.get(0);
    }

    private List<Offence> wrong(ProposedConductor conductor, OpenBreak open) {
        Requirement need = jumpers.requirement(open, conductor.material());
        List<Offence> wrong = new ArrayList<>(offences.apply(conductor));
        if (!conductor.size().isAtLeast(need.size())) {
            wrong.add(ConductorSizeCheck.tooSmall(conductor, need));
        }
        return wrong;
    }

    private Offence missing(OpenBreak open) {
        String pipe = open.pipe().id();
        WireSize need = jumpers.requirement(open, Material.COPPER).size();
        return new Offence(
                CheckedRule.BREAK_WITHOUT_JUMPER,
                pipe,
                "The " + open.gap().kind() + " at " + Numbers.print(open.gap().distance(), unit) + " in " + pipe
                        + " has no jumper around it; it needs " + need.label() + " copper.",
                "Run it from the pipe before the " + open.gap().kind() + " to the pipe after it.");
    }
}
