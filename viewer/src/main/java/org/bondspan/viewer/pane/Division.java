package org.bondspan.viewer.pane;

/**
 * How the window is divided between its parts.
 *
 * @param column width of the column beside the plan, in pixels
 * @param facts part of its height that the facts take, above the schedules
 */
public record Division(double column, double facts) {
    /** As a window is divided that nobody has used yet. */
    public static final Division USUAL = new Division(470, 0.46);
}
