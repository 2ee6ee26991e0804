package org.bondspan.sheet.plan;

/** What a colour stands for. Colour comes second: weight, dash and label carry the meaning. */
public enum Tint {
    PAPER,
    INK,
    GREY,
    PALE,
    GROUNDING_ELECTRODE_CONDUCTOR,
    BONDING_JUMPER,
    BONDING_CONDUCTOR,
    PIPE,
    NOT_PERMITTED
}
