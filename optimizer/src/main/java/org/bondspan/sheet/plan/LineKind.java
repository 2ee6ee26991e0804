package org.bondspan.sheet.plan;

import org.bondspan.layout.Role;
import org.bondspan.units.WireSize;

/** The lines of a plan, each with its pen and its words in the legend. */
public enum LineKind {
    WALL("outline of the building", Pen.plain(Tint.INK, 2.0)),
    BEAM("structural frame", Pen.plain(Tint.GREY, 0.9)),
    BEAM_THAT_CARRIES_NOTHING("structural frame that carries nothing", Pen.plain(Tint.GREY, 0.9, 5f, 3f)),
    PIPE("metal water piping, first part that may carry", Pen.lettered(Tint.PIPE, 2.6, "W")),
    PIPE_THAT_CARRIES_NOTHING("water piping that may not carry", Pen.lettered(Tint.PIPE, 0.8, "W", 6f, 3f)),
    RING("ground ring", Pen.plain(Tint.GREY, 1.2, 10f, 3f, 2f, 3f)),
    INSTALLED("installed conductor", Pen.lettered(Tint.INK, 1.2, "E")),
    FOOTING_REBAR("footing rebar, NOT PERMITTED as conductor", Pen.crossed(0.9, "R", 2f, 2.5f)),
    GAS_PIPE("gas pipe, NOT PERMITTED as conductor", Pen.crossed(0.9, "G")),
    ROOF_DECK("roof deck, NOT PERMITTED as conductor", Pen.crossed(0.9, "D", 7f, 3f)),
    OTHER_METAL("other metal, NOT PERMITTED as conductor", Pen.crossed(0.9, "M", 9f, 3f, 2f, 3f)),
    ALLOWED_COPPER("where new copper may run", Pen.plain(Tint.GREY, 0.6)),
    GROUNDING_ELECTRODE_CONDUCTOR("grounding electrode conductor", conductor(Role.GROUNDING_ELECTRODE_CONDUCTOR)),
    BONDING_JUMPER("bonding jumper", conductor(Role.BONDING_JUMPER)),
    BONDING_CONDUCTOR("bonding conductor", conductor(Role.BONDING_CONDUCTOR));

    private final String words;
    private final Pen pen;

    LineKind(String words, Pen pen) {
        this.words = words;
        this.pen = pen;
    }

    /** What the legend says. */
    public String words() {
        return words;
    }

    /** For a conductor the pen of 3/0 AWG. */
    public Pen pen() {
        return pen;
    }

    static LineKind of(Role role) {
        return switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> GROUNDING_ELECTRODE_CONDUCTOR;
            case BONDING_JUMPER -> BONDING_JUMPER;
            case BONDING_CONDUCTOR -> BONDING_CONDUCTOR;
        };
    }

    /** The larger the conductor, the heavier the line: 1.5 points up to 6 AWG, 4.2 from 250 kcmil on. */
    static Pen pen(Role role, WireSize size) {
        Pen pen = conductor(role);
        double above6 = Math.max(0, size.ordinal() - WireSize.AWG_6.ordinal());
        return new Pen(pen.tint(), Math.min(4.2, 1.5 + 0.3 * above6), pen.dash(), pen.letter(), pen.crossed());
    }

    private static Pen conductor(Role role) {
        return switch (role) {
            case GROUNDING_ELECTRODE_CONDUCTOR -> Pen.plain(Tint.GROUNDING_ELECTRODE_CONDUCTOR, 3.6);
            case BONDING_JUMPER -> Pen.plain(Tint.BONDING_JUMPER, 3.6, 14f, 4f);
            case BONDING_CONDUCTOR -> Pen.plain(Tint.BONDING_CONDUCTOR, 3.6, 9f, 3f, 2f, 3f);
        };
    }
}
