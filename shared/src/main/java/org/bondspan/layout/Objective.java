package org.bondspan.layout;

import java.util.Locale;

/** What was made least. */
public enum Objective {
    COPPER,
    COST;

    /** As results write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
