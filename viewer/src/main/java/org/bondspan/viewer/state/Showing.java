package org.bondspan.viewer.state;

/** Which plan the window shows. */
public enum Showing {
    ANSWER,
    /** The opened proposal with the findings of its review. */
    PROPOSAL,
    /** The pinned answer, or else the proposal, beside the answer. */
    SIDE_BY_SIDE
}
