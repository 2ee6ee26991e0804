package org.bondspan.layout;

/** What has become of an electrode, a frame or piping. */
public enum State {
    BONDED("bonded"),
    NOT_NEEDED("not-needed"),
    NOT_AN_ELECTRODE("not-an-electrode"),
    UNREACHED("unreached");

    private final String label;

    State(String label) {
        this.label = label;
    }

    /** As results write it. */
    public String label() {
        return label;
    }
}
