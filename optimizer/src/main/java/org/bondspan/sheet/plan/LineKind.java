package org.bondspan.sheet.plan;

import org.bondspan.layout.Role;
import org.bondspan.units.WireSize;

/** The lines of a plan, with their words in the legend. */
public enum LineKind {
    WALL("outline of the building"),
    INNER_WALL("wall that a run passes at a cost"),
    BEAM("structural frame"),
    BEAM_THAT_CARRIES_NOTHING("structural frame that carries nothing"),
    PIPE("metal water piping that may carry"),
    PIPE_THAT_CARRIES_NOTHING("water piping that may not carry"),
    RING("ground ring"),
    INSTALLED("installed conductor"),
    FOOTING_REBAR("footing rebar, NOT PERMITTED to carry"),
    GAS_PIPE("gas pipe, NOT PERMITTED to carry"),
    ROOF_DECK("roof deck, NOT PERMITTED to carry"),
    OTHER_METAL("other metal, NOT PERMITTED to carry"),
    ALLOWED_COPPER("where new copper may run"),
    GROUNDING_ELECTRODE_CONDUCTOR("grounding electrode conductor, GEC"),
    BONDING_JUMPER("bonding jumper, BJ"),
    BONDING_CONDUCTOR("bonding conductor, BC");

    private final String words;

    LineKind(String words) {
        this.words = words;
    }

    /** What the legend says. */
    public String words() {
        return words;
    }

    /** For a conductor the pen of 3/0 AWG. */
    public Pen pen() {
        return switch (this) {
            case WALL -> Pen.plain(Tint.INK, 1.8);
            case INNER_WALL -> Pen.plain(Tint.INK, 1.3);
            case BEAM -> Pen.plain(Tint.GREY, 0.9);
            case BEAM_THAT_CARRIES_NOTHING -> Pen.plain(Tint.GREY, 0.9, 5f, 3f);
            case PIPE -> Pen.lettered(Tint.PIPE, 2.6, "W");
            case PIPE_THAT_CARRIES_NOTHING -> Pen.lettered(Tint.PIPE, 0.8, "W", 6f, 3f);
            case RING -> Pen.plain(Tint.GREY, 1.2, 10f, 3f, 2f, 3f);
            case INSTALLED -> Pen.lettered(Tint.INK, 1.2, "E");
            case FOOTING_REBAR -> Pen.crossed(0.9, "R", 2f, 2.5f);
            case GAS_PIPE -> Pen.crossed(0.9, "G");
            case ROOF_DECK -> Pen.crossed(0.9, "D", 7f, 3f);
            case OTHER_METAL -> Pen.crossed(0.9, "M", 9f, 3f, 2f, 3f);
            case ALLOWED_COPPER -> Pen.plain(Tint.GREY, 0.6);
            case GROUNDING_ELECTRODE_CONDUCTOR -> pen(Role.GROUNDING_ELECTRODE_CONDUCTOR, WireSize.AWG_3_0);
            case BONDING_JUMPER -> pen(Role.BONDING_JUMPER, WireSize.AWG_3_0);
            case BONDING_CONDUCTOR -> pen(Role.BONDING_CONDUCTOR, WireSize.AWG_3_0);
        };
    }

    static LineKind of(Role role) {
        return switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> GROUNDING_ELECTRODE_CONDUCTOR;
            case BONDING_JUMPER -> BONDING_JUMPER;
            case BONDING_CONDUCTOR -> BONDING_CONDUCTOR;
        };
    }

    /** The larger the conductor, the heavier the line: 1.5 points up to 6 AWG, 0.8 more for each doubling. */
    static Pen pen(Role role, WireSize size) {
        double doublings = Math.log(size.circularMils() / (double) WireSize.AWG_6.circularMils()) / Math.log(2);
        double width = 1.5 + 0.8 * Math.max(0, doublings);
        return switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> Pen.plain(Tint.GROUNDING_ELECTRODE_CONDUCTOR, width);
            case BONDING_JUMPER -> Pen.plain(Tint.BONDING_JUMPER, width, 14f, 4f);
            case BONDING_CONDUCTOR -> Pen.plain(Tint.BONDING_CONDUCTOR, width, 9f, 3f, 2f, 3f);
        };
    }
}
