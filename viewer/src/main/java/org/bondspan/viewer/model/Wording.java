package org.bondspan.viewer.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import org.bondspan.layout.End;
import org.bondspan.layout.Link;
import org.bondspan.layout.Role;
import org.bondspan.layout.State;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;
import org.bondspan.viewer.state.Plan;

/** Places, ends and amounts in words, in the unit of a site. */
public final class Wording {
    private final LengthUnit unit;
    private final boolean oneLevel;

    private Wording(LengthUnit unit, boolean oneLevel) {
        this.unit = unit;
        this.oneLevel = oneLevel;
    }

    static Wording of(Site site) {
        return new Wording(site.lengthUnit(), site.levels().size() == 1);
    }

    String of(Length length) {
        return Numbers.print(length, unit);
    }

    String of(Weight weight) {
        return Numbers.print(weight, unit);
    }

    /** {@code 600, 394 at 2 ft}; with the level in front where there are several. */
    String of(Position position) {
        return (oneLevel ? "" : position.level() + " ")
                + number(Length.ofNanometres(position.at().x())) + ", "
                + number(Length.ofNanometres(position.at().y())) + " at " + number(position.height()) + " "
                + unit.symbol();
    }

    /** The vertices of a run, a line each. */
    String of(List<Position> run) {
        return run.stream().map(this::of).collect(Collectors.joining("\n"));
    }

    String of(End end) {
        if (end instanceof End.AtService at) {
            return at.service() + at.connection().map(id -> ", " + id).orElse("");
        }
        if (end instanceof End.AtElectrode at) {
            return at.electrode() + at.connection().map(id -> ", " + id).orElse("");
        }
        if (end instanceof End.OnPath on) {
            return on.path()
                    + on.distance().map(along -> ", " + of(along) + " along").orElse("");
        }
        if (end instanceof End.OnConductor on) {
            return "tap on " + on.conductor() + " at " + of(on.at());
        }
        if (end instanceof End.AtJoint at) {
            return "joint " + at.joint();
        }
        return of(((End.AtPlace) end).place());
    }

    /** Where metal is entered and where it is left. */
    String between(Link link) {
        return link.fromPlace().map(this::of).orElseGet(() -> of(link.from())) + " to "
                + link.toPlace().map(this::of).orElseGet(() -> of(link.to()));
    }

    private String number(Length length) {
        return Numbers.rounded(length.in(unit)).toPlainString();
    }

    /** {@code +12.50 lb}, {@code −508.20 lb}, {@code ±0.00 lb}: how far an amount is from another. */
    static String signed(BigDecimal difference, String unit) {
        String sign = difference.signum() > 0 ? "+" : difference.signum() < 0 ? "\u2212" : "\u00b1";
        return sign + Numbers.print(difference.abs()) + " " + unit;
    }

    /** {@code grounding electrode conductor}. */
    static String of(Role role) {
        return spaced(role.label());
    }

    /** As the legend of the sheets abbreviates it. */
    static String letters(Role role) {
        return switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> "GEC";
            case BONDING_JUMPER -> "BJ";
            case BONDING_CONDUCTOR -> "BC";
        };
    }

    /** Before there is an interconnection nothing is bonded yet. */
    static String of(State state, Plan plan) {
        return state == State.BONDED && !plan.isRouted() ? "to be bonded" : spaced(state.label());
    }

    static String spaced(String label) {
        return label.replace('-', ' ');
    }

    static String counted(long count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }

    static String listed(List<String> words) {
        return words.isEmpty() ? "nothing" : String.join(", ", words);
    }
}
