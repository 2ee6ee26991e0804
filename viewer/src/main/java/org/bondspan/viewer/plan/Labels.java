package org.bondspan.viewer.plan;

/** Whether words stand on the plan; the numbers of findings do either way. */
public enum Labels {
    SHOWN,
    HIDDEN
}
