package org.bondspan.site;

import java.util.Locale;

/** Conductor material; aluminum includes copper-clad aluminum, which Table 250.66 treats alike. */
public enum Material {
    COPPER,
    ALUMINUM;

    /** As site files write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
