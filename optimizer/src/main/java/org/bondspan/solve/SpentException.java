package org.bondspan.solve;

/** A search has used up what it was allowed; caught within this package. */
final class SpentException extends RuntimeException {

    private static final long serialVersionUID = 1;

    enum What {
        TIME,
        MEMORY,
        WORK
    }

    private final What what;

    SpentException(What what) {
        super("spent: " + what, null, false, false);
        this.what = what;
    }

    What what() {
        return what;
    }
}
