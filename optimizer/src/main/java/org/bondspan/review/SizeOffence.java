package org.bondspan.review;

import org.bondspan.finding.Finding;
import org.bondspan.finding.Severity;
import org.bondspan.layout.Proposal.ProposedConductor;
import org.bondspan.units.WireSize;

/** Words for what is too small. */
final class SizeOffence {
    private SizeOffence() {}

    static Offence ofConductor(ProposedConductor conductor, WireSize need, String toward) {
        return new Offence(
                CheckedRule.CONDUCTOR_TOO_SMALL,
                conductor.id(),
                conductor.id() + " is " + describe(conductor) + "; from " + toward + " it needs " + need.label() + " "
                        + conductor.material().label() + ".",
                "Make it " + need.label() + ".");
    }

    static Offence sideBySide(ProposedConductor conductor, WireSize need, String toward) {
        return new Offence(
                CheckedRule.SIDE_BY_SIDE,
                conductor.id(),
                conductor.id() + ", " + describe(conductor) + ", shares its way with others too small, from " + toward
                        + "; smaller conductors side by side do not make up one of " + need.label() + ".",
                "Run one conductor of " + need.label() + ".");
    }

    static Finding larger(ProposedConductor conductor, WireSize need, String toward) {
        return new Finding(
                CheckedRule.LARGER_THAN_NEEDED.rule().section(),
                Severity.NOTE,
                conductor.id(),
                conductor.id() + " is " + describe(conductor) + "; from " + toward + " " + need.label()
                        + " is enough. Make it smaller to save copper.");
    }

    static Offence ofCarrier(String path, WireSize capacity, WireSize need, String toward) {
        return new Offence(
                CheckedRule.CARRIER_TOO_SMALL,
                path,
                path + " is " + capacity.label() + "; from " + toward + " the way needs " + need.label() + ".",
                "Run new copper of " + need.label() + " past it.");
    }

    private static String describe(ProposedConductor conductor) {
        return conductor.size().label() + " " + conductor.material().label();
    }
}
