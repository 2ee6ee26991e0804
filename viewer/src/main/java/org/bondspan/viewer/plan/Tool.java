package org.bondspan.viewer.plan;

/** What a click on the plan does. */
public enum Tool {
    /** Selects what lies there. */
    LOOK,
    /** Names a place to measure from or to. */
    MEASURE
}
