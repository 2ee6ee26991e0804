package org.bondspan.report;

import java.util.List;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;

/** The route for the least cost beside the one for the least copper, each called least only where that is proven. */
record BothOptima(Layout layout, Cost cost) {
    String heading() {
        return forCost().replaceFirst("^l", "L").replaceFirst("^b", "B") + " and " + forCopper();
    }

    /** Route, copper, cost. */
    List<List<String>> rows() {
        LengthUnit unit = layout.lengthUnit();
        String copper =
                layout.copper().map(each -> Numbers.print(each.weight(), unit)).orElse("");
        return List.of(
                List.of(forCost(), copper, money(cost.total())),
                List.of(forCopper(), Numbers.print(cost.leastCopper(), unit), money(cost.leastCopperCost())));
    }

    private String forCost() {
        return name(layout.status(), "cost");
    }

    private String forCopper() {
        return name(cost.leastCopperStatus(), "copper");
    }

    private static String name(Status status, String of) {
        return (status == Status.LEAST ? "least " : "best found for ") + of;
    }

    private String money(Money amount) {
        return Numbers.print(amount, cost.currency());
    }
}
