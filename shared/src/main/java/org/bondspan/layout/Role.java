package org.bondspan.layout;

/** What a conductor is called: 250.24 and 250.64(C), 250.53(C), 250.104. */
public enum Role {
    GROUNDING_ELECTRODE_CONDUCTOR("grounding-electrode-conductor"),
    BONDING_JUMPER("bonding-jumper"),
    BONDING_CONDUCTOR("bonding-conductor");

    private final String label;

    Role(String label) {
        this.label = label;
    }

    /** As results write it. */
    public String label() {
        return label;
    }
}
