package org.bondspan.site;

/** A busbar of at least 1/4 in by 2 in where conductors may be joined, 250.64(F)(3). */
public record Busbar(String id, Position position) {}
