package org.bondspan.takeoff;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Money;

/**
 * What a row costs; empty where a price is not stated.
 *
 * @param unitPrice material of 1000 ft or of one piece
 * @param unitHours labor of 1000 ft or of one piece, at floor height
 * @param factor of labor for the height
 * @param hours labor of the row
 * @param material before rounding
 * @param labor before rounding
 * @param other installed price that is not parted into material and labor
 */
public record RowMoney(
        Optional<Money> unitPrice,
        Optional<BigDecimal> unitHours,
        BigDecimal factor,
        Optional<BigDecimal> hours,
        Optional<ExactMoney> material,
        Optional<ExactMoney> labor,
        Optional<ExactMoney> other,
        String priceSource,
        String laborSource) {

    static final RowMoney NONE = new RowMoney(
            Optional.empty(),
            Optional.empty(),
            BigDecimal.ONE,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "");

    public Optional<Money> roundedMaterial() {
        return material.map(ExactMoney::rounded);
    }

    public Optional<Money> roundedLabor() {
        return labor.map(ExactMoney::rounded);
    }

    public Optional<Money> roundedOther() {
        return other.map(ExactMoney::rounded);
    }

    /** The sum of the rounded parts; empty where none is known. */
    public Optional<Money> cost() {
        return Stream.of(roundedMaterial(), roundedLabor(), roundedOther())
                .flatMap(Optional::stream)
                .reduce(Money::plus);
    }

    /** The sum of the parts before rounding. */
    ExactMoney exact() {
        return Stream.of(material, labor, other).flatMap(Optional::stream).reduce(ExactMoney.ZERO, ExactMoney::plus);
    }
}
