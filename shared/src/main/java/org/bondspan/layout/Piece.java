package org.bondspan.layout;

import org.bondspan.units.Length;

/**
 * A part of a conductor's length, make-up and jumpers included, and how high it runs, for its labor: between these two
 * heights above the floor of its level. A part that slopes in plan has the height of its higher end throughout.
 */
public record Piece(Length length, Length lowest, Length highest) {}
