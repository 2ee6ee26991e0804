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
        List<Schedule> tables = new ArrayList<>(List.of(sums(), missing()));
        takeOff.layout().cost().map(this::bothOptima).ifPresent(tables::add);
        return tables;
    }

    /**
     * By size and kind, with what they cost where that is known: every row then adds up from left to right, every
     * column from top to bottom.
     */
    Schedule sums() {
        List<String> headings = new ArrayList<>(List.of("~what", ">length", ">to buy", ">count", ">weight"));
        List<List<String>> rows = new ArrayList<>();
        takeOff.groups().forEach(group -> rows.add(new ArrayList<>(quantities(group))));
        if (takeOff.total().isEmpty()) {
            return new Schedule("Take-off, without a sum of money", headings, rows);
        }
        headings.addAll(List.of(">material", ">hours", ">labor", ">other", ">cost"));
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).addAll(money(takeOff.groups().get(i)));
        }
        rows.addAll(totals(takeOff.total().get()));
        return new Schedule("Take-off, in " + takeOff.currency(), headings, rows);
    }

    private List<String> quantities(Group group) {
        boolean isLength = group.pieces() == 0;
        return List.of(
                group.name(),
                isLength ? Numbers.print(group.measured(), unit) : "",
                isLength ? Numbers.print(group.purchase(), unit) : "",
                isLength ? "" : String.valueOf(group.pieces()),
                group.weight().isZero() ? "" : Numbers.print(group.weight(), unit));
    }

    private static List<String> money(Group group) {
        return List.of(
                number(group.material()),
                Numbers.print(group.hours()),
                number(group.labor()),
                number(group.other()),
                number(group.cost()));
    }

    private static List<List<String>> totals(Total total) {
        boolean isExact = total.rounding().isZero();
        List<String> sum = List.of(
                isExact ? "all" : "sum of rows",
                "",
                "",
                "",
                "",
                number(total.material()),
                Numbers.print(total.hours()),
                number(total.labor()),
                number(total.crossings()),
                number(total.ofRows()));
        return isExact
                ? List.of(sum)
                : List.of(sum, cost("rounding of rows", total.rounding()), cost("all", total.total()));
    }

    private static List<String> cost(String what, Money cost) {
        return List.of(what, "", "", "", "", "", "", "", "", number(cost));
    }

    private Schedule missing() {
        return new Schedule(
                "Not priced: these are not stated",
                List.of("~file, field"),
                takeOff.missing().stream().map(List::of).toList());
    }

    private Schedule bothOptima(Cost cost) {
        BothOptima both = new BothOptima(takeOff.layout(), cost);
        List<List<String>> rows = new ArrayList<>(both.rows());
        rows.add(List.of("no lawful route costs less than", "", Numbers.print(cost.lowerBound(), cost.currency())));
        return new Schedule(both.heading(), List.of("~route", ">copper", ">cost"), rows);
    }

    private static String number(Money money) {
        return Numbers.print(money.amount());
    }
}
