package org.bondspan.layout;

import org.bondspan.units.Length;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/** All conductors of one size together. */
public record SizeTotal(WireSize size, Length length, Weight weight) {}
