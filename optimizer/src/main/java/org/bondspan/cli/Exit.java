package org.bondspan.cli;

/** Exit codes. */
final class Exit {
    /** Done, nothing to mend. */
    static final int CLEAN = 0;

    /** Done, but impossible, or a violation remains. */
    static final int FOUND = 1;

    /** Bad input or usage; nothing was answered. */
    static final int BAD_INPUT = 2;

    /** Bondspan itself failed. */
    static final int FAILED = 70;

    private Exit() {}
}
