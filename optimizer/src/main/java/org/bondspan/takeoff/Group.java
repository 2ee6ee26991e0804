package org.bondspan.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.bondspan.units.Length;
import org.bondspan.units.Money;
import org.bondspan.units.Weight;

/** Rows of one kind together: a size, raceway, connections and so on. Money is the sum of the rounded rows. */
public record Group(
        String name,
        Length measured,
        Length purchase,
        int pieces,
        Weight weight,
        Money material,
        BigDecimal hours,
        Money labor,
        Money other) {

    static Group of(String name, List<Row> rows) {
        return new Group(
                name,
                rows.stream().map(row -> row.quantity().measured()).reduce(Length.ZERO, Length::plus),
                rows.stream().map(row -> row.quantity().purchase()).reduce(Length.ZERO, Length::plus),
                rows.stream().mapToInt(row -> row.quantity().pieces()).sum(),
                rows.stream().map(Row::weight).reduce(Weight.ZERO, Weight::plus),
                sum(rows, RowMoney::roundedMaterial),
                rows.stream().flatMap(row -> row.money().hours().stream()).reduce(BigDecimal.ZERO, BigDecimal::add),
                sum(rows, RowMoney::roundedLabor),
                sum(rows, RowMoney::roundedOther));
    }

    private static Money sum(List<Row> rows, Function<RowMoney, Optional<Money>> part) {
        return rows.stream().flatMap(row -> part.apply(row.money()).stream()).reduce(Money.ZERO, Money::plus);
    }

    public Money cost() {
        return material.plus(labor).plus(other);
    }
}
