package org.bondspan.price;

import java.util.Locale;

/** How a conductor is installed, which its labor depends on. */
public enum Installation {
    EXPOSED,
    RACEWAY,
    BURIED;

    /** As price books write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
