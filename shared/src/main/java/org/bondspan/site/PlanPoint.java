package org.bondspan.site;

/** A place in plan: x east, y north, in nanometres. */
public record PlanPoint(long x, long y) {}
