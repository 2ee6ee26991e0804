package org.bondspan.site;

import org.bondspan.units.Length;

/** A vertex of a line: its place in plan and its height above the floor of the line's level. */
public record LineVertex(PlanPoint at, Length height) {}
