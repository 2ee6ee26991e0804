package org.bondspan.layout;

import org.bondspan.units.Money;
import org.bondspan.units.Weight;

/**
 * Installed cost of the answer, and what the route with the least copper weighs and costs at the same prices.
 *
 * @param currency three letters, ISO 4217
 * @param rounding between the total, rounded once, and the sum of rows that are each rounded to the cent
 * @param total material, labor, wall crossings and rounding
 * @param leastCopperStatus whether that route is proven to have the least copper, or is the best found
 * @param lowerBound proven: no lawful interconnection on this site costs less at these prices
 */
public record Cost(
        String currency,
        Money total,
        Money material,
        Money labor,
        Money crossings,
        Money rounding,
        Money lowerBound,
        Weight leastCopper,
        Money leastCopperCost,
        Status leastCopperStatus) {}
