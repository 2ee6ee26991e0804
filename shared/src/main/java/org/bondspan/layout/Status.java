package org.bondspan.layout;

/** What is known about the answer. */
public enum Status {
    LEAST("least"),
    BEST_FOUND("best-found"),
    IMPOSSIBLE("impossible");

    private final String label;

    Status(String label) {
        this.label = label;
    }

    /** As results write it. */
    public String label() {
        return label;
    }
}
