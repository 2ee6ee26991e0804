package org.bondspan.layout;

/** What tells the length with which a review reckons a conductor. */
public enum LengthFrom {
    /** The proposal states it. */
    STATED,
    /** Its drawn line is measured. */
    LINE,
    /** It states less than its line, its ends or its taps need: it counts with what these need. */
    NEEDED,
    /** Neither is there: it counts as straight from end to end, and may take more. */
    ENDS,
    /** Where it ends is not told either. */
    NOTHING
}
