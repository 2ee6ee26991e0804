package org.bondspan.layout;

import org.bondspan.units.Length;
import org.bondspan.units.Weight;

/** All new copper: measured, jumpers around breaks included; {@code purchaseLength} includes waste. */
public record Copper(Length length, Weight weight, Length purchaseLength) {}
