package org.bondspan.layout;

/** Physical protection that 250.64(B) asks for: smaller than 6 AWG runs in raceway or cable armor. */
public enum Protection {
    NONE("none"),
    RACEWAY("raceway");

    private final String label;

    Protection(String label) {
        this.label = label;
    }

    /** As results write it. */
    public String label() {
        return label;
    }
}
