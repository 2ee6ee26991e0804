package org.bondspan.site;

import org.bondspan.units.Length;

/**
 * A place in the building.
 *
 * @param level the id of the level
 * @param at its place in plan
 * @param height above the floor of that level, negative below it
 */
public record Position(String level, PlanPoint at, Length height) {}
