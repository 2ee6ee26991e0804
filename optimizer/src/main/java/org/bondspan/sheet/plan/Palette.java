package org.bondspan.sheet.plan;

import java.awt.Color;

/**
 * Colours for light paper and dark screens. The hues are those of Okabe and Ito's set for all kinds of colour vision,
 * darkened or lightened to a contrast of at least 3 : 1 (WCAG 2.1, 1.4.11) against the ground.
 */
public enum Palette {
    LIGHT(0xFFFFFF, 0x111111, 0x6B6B6B, 0xE9E9E9, 0xC75000, 0x0072B2, 0x00795A, 0x4A6C80, 0x8A4A6D),
    DARK(0x0D1117, 0xE6EDF3, 0x8B949E, 0x2A313A, 0xE69F00, 0x56B4E9, 0x3CC9A0, 0x9DB7C4, 0xCC79A7);

    private final int[] colours;

    Palette(int... colours) {
        this.colours = colours;
    }

    public Color of(Tint tint) {
        return new Color(colours[tint.ordinal()]);
    }
}
