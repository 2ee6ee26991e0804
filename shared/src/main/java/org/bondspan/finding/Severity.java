package org.bondspan.finding;

import java.util.Locale;

/** How grave a finding is: a violation must be mended, a caution must be looked at, a note explains. */
public enum Severity {
    VIOLATION,
    CAUTION,
    NOTE;

    /** As results write it. */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
