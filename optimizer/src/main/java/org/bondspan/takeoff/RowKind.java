package org.bondspan.takeoff;

/** What a row of a take-off is about. Sections of MasterFormat: 26 05 26 grounding and bonding, 26 05 33 raceway. */
public enum RowKind {
    CONDUCTOR("26 05 26"),
    RACEWAY("26 05 33"),
    CONNECTION("26 05 26"),
    TAP("26 05 26"),
    SPLICE("26 05 26"),
    WALL("26 05 26");

    private final String section;

    RowKind(String section) {
        this.section = section;
    }

    /** Section of MasterFormat. */
    public String section() {
        return section;
    }
}
