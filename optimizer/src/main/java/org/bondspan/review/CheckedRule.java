package org.bondspan.review;

import org.bondspan.code.Rule;
import org.bondspan.finding.Severity;

/**
 * The dictionary of checks: what a review asks of a route, in the words of the trade, each with its section and the
 * gravest that it can be. What no service relies on is a note at most.
 */
public enum CheckedRule {
    NOT_CONNECTED(Rule.ELECTRODE_SYSTEM, "every electrode that must be connected has a way to every service"),
    FRAME_NOT_BONDED(Rule.FRAME_BOND, "every frame that must be bonded has a way to every service"),
    PIPING_NOT_BONDED(Rule.PIPING_BOND, "all metal water piping has a way to every service"),
    SEVERAL_SYSTEMS(Rule.COMMON_SYSTEM, "all services are tied to one grounding electrode system"),
    REBAR_AS_LINK(Rule.ELECTRODE_BONDING_JUMPER, "footing rebar joins nothing to anything"),
    THROUGH_CONCRETE_ENCASED(
            Rule.ELECTRODE_BONDING_JUMPER, "no way passes through a concrete-encased electrode, at one stub or two"),
    GAS_PIPE_AS_LINK(Rule.NOT_AN_ELECTRODE, "gas pipe joins nothing to anything"),
    OTHER_METAL_AS_LINK(Rule.FRAME_AND_PIPE, "roof deck and other metal join nothing to anything"),
    FRAME_AS_LINK(Rule.STRUCTURAL_FRAME, "a frame carries only where it is continuous and the site lets it"),
    PIPE_TOO_FAR_IN(
            Rule.WATER_PIPE_FIVE_FEET, "water pipe carries only within 5 ft of its entrance, or as far as it may"),
    BREAK_WITHOUT_JUMPER(Rule.PIPE_CONTINUITY, "every meter and the like in a connected pipe has a jumper around it"),
    CARRIER_TOO_SMALL(Rule.CONDUCTOR_SIZE, "a ring or installed conductor carries only up to its own size"),
    CONDUCTOR_TOO_SMALL(Rule.CONDUCTOR_SIZE, "every conductor has the size that it needs"),
    SIDE_BY_SIDE(Rule.NO_PARALLEL, "no smaller conductors run side by side in place of one"),
    ALUMINUM_PLACES(Rule.ALUMINUM_PLACES, "aluminum is not buried and does not end outdoors within 18 in of the earth"),
    ALUMINUM_BELOW(
            Rule.ALUMINUM_PLACES,
            "aluminum below the lowest floor does not lie bare against earth or masonry",
            Severity.CAUTION),
    UNPROTECTED(Rule.PROTECTION, "smaller than 6 AWG runs in raceway; larger does so where it is exposed to damage"),
    MECHANICAL_JOINT(Rule.UNBROKEN, "no mechanical joint in a grounding electrode conductor"),
    RACEWAY_NOT_BONDED(Rule.RACEWAY_BOND, "a ferrous raceway is bonded to its conductor at both ends"),
    WATER_PIPE_ALONE(Rule.WATER_PIPE_SUPPLEMENT, "water pipe is not the only electrode"),
    LONE_DRIVEN_ELECTRODE(
            Rule.LONE_DRIVEN_ELECTRODE, "a rod, pipe or plate has company, unless it measures 25 ohms or less"),
    DRIVEN_TOO_CLOSE(Rule.DRIVEN_SPACING, "rods, pipes and plates stand at least 6 ft apart"),
    SHALLOW_RING(Rule.RING_DEPTH, "a ground ring lies at least 30 in deep"),
    RING_WITHOUT_LEAVE(
            Rule.ELECTRODE_BONDING_JUMPER,
            "a ring joins other things only where the site gives it leave",
            Severity.CAUTION),
    STEEL_OR_RING_CARRIES(
            Rule.CLEAN_SURFACES, "where a frame or ring carries, its metal is clean and unbroken", Severity.CAUTION),
    STEEL_OR_RING_ACCESS(
            Rule.ACCESS, "where a frame or ring carries, the connections are accessible", Severity.CAUTION),
    LANDING_NOT_STATED(
            Rule.WATER_PIPE_FIVE_FEET, "it is stated how far in a conductor lands on water pipe", Severity.CAUTION),
    JOINT_OF_NOTHING(Rule.UNBROKEN, "a joint names conductors that the proposal or the site has", Severity.CAUTION),
    JOINT_ELSEWHERE(Rule.UNBROKEN, "the conductors of a joint meet where their ends or lines say", Severity.CAUTION),
    OTHER_SITE(Rule.SITE, "a result is of the site that it is reviewed for", Severity.CAUTION),
    LENGTH_TOO_SHORT(
            Rule.LENGTH, "no stated length is below what the line, the ends or the taps need", Severity.CAUTION),
    OFF_THE_PLAN(Rule.GEOMETRY, "no line passes a closed area or leaves the outline", Severity.CAUTION),
    LOOP(Rule.GEOMETRY, "no conductor begins and ends at one thing", Severity.CAUTION),
    LINK_ELSEWHERE(Rule.FRAME_AND_PIPE, "a declared link ends at its own metal, or at what lies on it", Severity.NOTE),
    LARGER_THAN_NEEDED(Rule.CONDUCTOR_SIZE, "no conductor is larger than it need be", Severity.NOTE);

    private final Rule rule;
    private final String asks;
    private final Severity gravest;

    CheckedRule(Rule rule, String asks) {
        this(rule, asks, Severity.VIOLATION);
    }

    CheckedRule(Rule rule, String asks, Severity gravest) {
        this.rule = rule;
        this.asks = asks;
        this.gravest = gravest;
    }

    /** The section behind the check. */
    public Rule rule() {
        return rule;
    }

    /** What the check asks of a route. */
    public String asks() {
        return asks;
    }

    /** How grave its findings can be. */
    public Severity gravest() {
        return gravest;
    }
}
