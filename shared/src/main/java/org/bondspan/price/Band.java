package org.bondspan.price;

import java.math.BigDecimal;

/** A part of a run that is installed in one way: how, and how many times as long its labor takes for its height. */
public record Band(Installation installation, BigDecimal factor) {}
