package org.bondspan.sheet;

/**
 * How a plan is set into its room.
 *
 * @param scales picks its scale
 * @param size of the letters, in points
 * @param detailShare the largest part of the height of the room that details may take
 */
record PlanStyle(DrawingScale.Choice scales, double size, double detailShare) {}
