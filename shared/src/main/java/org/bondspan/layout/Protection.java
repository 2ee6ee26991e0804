package org.bondspan.layout;

import org.bondspan.units.WireSize;

/** Physical protection that 250.64(B) asks for: smaller than 6 AWG runs in raceway or cable armor. */
public enum Protection {
    NONE("none"),
    RACEWAY("raceway");

    private final String label;

    Protection(String label) {
        this.label = label;
    }

    /** What a conductor of that size needs wherever it runs. */
    public static Protection of(WireSize size) {
        return size.needsRaceway() ? RACEWAY : NONE;
    }

    /** As results write it. */
    public String label() {
        return label;
    }
}
