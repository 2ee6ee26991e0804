package org.bondspan.report;

import java.util.ArrayList;
import java.util.List;
import org.bondspan.layout.Cost;
import org.bondspan.layout.Status;
import org.bondspan.sheet.table.Schedule;
import org.bondspan.takeoff.Group;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.Total;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;

/** The sums of a take-off as tables of a report; the rows are in its own files. */
final class TakeOffTables {
    private final TakeOff takeOff;
    private final LengthUnit unit;

    TakeOffTables(TakeOff takeOff) {
        this.takeOff = takeOff;
        this.unit = takeOff.layout().lengthUnit();
    }

    /** Empty tables where there is nothing to take off, or no price. */
    List<Schedule> list() {
        if (takeOff.layout().status() == Status.IMPOSSIBLE) {
            return List.of();
        }
        return List.of(takeOff.total().map(this::priced).orElseGet(this::quantities), missing(), bothOptima());
    }

    private Schedule quantities() {
        return new Schedule(
                "Take-off, without a sum of money",
                List.of("~what", ">length", ">to buy", ">count", ">weight"),
                takeOff.groups().stream().map(group -> quantities(group, unit)).toList());
    }

    /** What, length, to buy, count and weight of a group. */
    static List<String> quantities(Group group, LengthUnit unit) {
        boolean isLength = group.pieces() == 0;
        return List.of(
                group.name(),
                isLength ? Numbers.print(group.measured(), unit) : "",
                isLength ? Numbers.print(group.purchase(), unit) : "",
                isLength ? "" : String.valueOf(group.pieces()),
                group.weight().isZero() ? "" : Numbers.print(group.weight(), unit));
    }

    private Schedule priced(Total total) {
        List<List<String>> rows = new ArrayList<>();
        for (Group group : takeOff.groups()) {
            List<String> cells = new ArrayList<>(quantities(group, unit));
            cells.addAll(money(group.material(), group.labor(), group.other(), group.cost()));
            rows.add(cells);
        }
        boolean isExact = total.rounding().isZero();
        List<String> sum = new ArrayList<>(List.of(isExact ? "all" : "sum of rows", "", "", "", ""));
        sum.addAll(money(total.material(), total.labor(), total.crossings(), total.ofRows()));
        rows.add(sum);
        if (!isExact) {
            rows.add(List.of("rounding of rows", "", "", "", "", "", "", "", number(total.rounding())));
            rows.add(List.of("all", "", "", "", "", "", "", "", number(total.total())));
        }
        return new Schedule(
                "Take-off, in " + takeOff.currency(),
                List.of("~what", ">length", ">to buy", ">count", ">weight", ">material", ">labor", ">other", ">cost"),
                rows);
    }

    private static List<String> money(Money material, Money labor, Money other, Money cost) {
        return List.of(number(material), number(labor), number(other), number(cost));
    }

    private Schedule missing() {
        return new Schedule(
                "Not priced: these are not stated",
                List.of("~file, field"),
                takeOff.missing().stream().map(List::of).toList());
    }

    private Schedule bothOptima() {
        List<List<String>> rows = new ArrayList<>();
        takeOff.layout().cost().ifPresent(cost -> {
            String copper = takeOff.layout()
                    .copper()
                    .map(each -> Numbers.print(each.weight(), unit))
                    .orElse("");
            rows.add(List.of("least cost", copper, print(cost, cost.total())));
            rows.add(List.of(
                    "least copper", Numbers.print(cost.leastCopper(), unit), print(cost, cost.leastCopperCost())));
            rows.add(List.of("no lawful route costs less than", "", print(cost, cost.lowerBound())));
        });
        return new Schedule("Least cost and least copper", List.of("~route", ">copper", ">cost"), rows);
    }

    private static String print(Cost cost, Money money) {
        return Numbers.print(money, cost.currency());
    }

    private static String number(Money money) {
        return Numbers.print(money.amount());
    }
}
