package org.bondspan.sheet.plan;

import java.awt.Color;

/**
 * Colours for light paper and dark screens. The hues are those of Okabe and Ito's set for all kinds of colour vision,
 * darkened or lightened to a contrast of at least 3 : 1 against the ground (WCAG 2.1, 1.4.11).
 */
public enum Palette {
    LIGHT,
    DARK;

    public Color of(Tint tint) {
        return new Color(this == LIGHT ? light(tint) : dark(tint));
    }

    private static int light(Tint tint) {
        return switch (tint) {
            case PAPER -> 0xFFFFFF;
            case INK -> 0x111111;
            case GREY -> 0x6B6B6B;
            case PALE -> 0xECECEC;
            case GROUNDING_ELECTRODE_CONDUCTOR -> 0xC75000;
            case BONDING_JUMPER -> 0x0072B2;
            case BONDING_CONDUCTOR -> 0x00795A;
            case PIPE -> 0x4A6C80;
            case NOT_PERMITTED -> 0x8A4A6D;
        };
    }

    private static int dark(Tint tint) {
        return switch (tint) {
            case PAPER -> 0x0D1117;
            case INK -> 0xE6EDF3;
            case GREY -> 0x8B949E;
            case PALE -> 0x1F262E;
            case GROUNDING_ELECTRODE_CONDUCTOR -> 0xE69F00;
            case BONDING_JUMPER -> 0x56B4E9;
            case BONDING_CONDUCTOR -> 0x3CC9A0;
            case PIPE -> 0x9DB7C4;
            case NOT_PERMITTED -> 0xCC79A7;
        };
    }
}
