package org.bondspan.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bondspan.layout.Layout;
import org.bondspan.layout.Status;
import org.bondspan.takeoff.Quantity;
import org.bondspan.takeoff.Row;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakeOff.Origin;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** A take-off as text: quantities, what they cost, sums, and what it rests on. */
public final class TakeOffText {
    private final TakeOff takeOff;
    private final Layout layout;
    private final LengthUnit unit;
    private final Places places;
    private final Page page;
    private final SharedSections shared;
    private final Map<String, Integer> sources = new LinkedHashMap<>();

    private TakeOffText(TakeOff takeOff, Ink ink) {
        this.takeOff = takeOff;
        this.layout = takeOff.layout();
        this.unit = layout.lengthUnit();
        this.places = new Places(unit);
        this.page = new Page(ink);
        this.shared = new SharedSections(page);
    }

    /** Ends in a line break. */
    public static String of(TakeOff takeOff, Ink ink) {
        return new TakeOffText(takeOff, ink).text();
    }

    private String text() {
        shared.title(layout.site(), layout.codeEdition(), layout.adoption());
        verdict();
        quantities();
        counts();
        costs();
        page.table("Sums", Table.of(new TakeOffTables(takeOff).sums()));
        page.list("Not priced: these are not stated", takeOff.missing());
        page.list("Assumptions", takeOff.assumptions());
        shared.findings(layout.findings());
        shared.closing(List.of(), layout.notChecked(), layout.cautions());
        return page.text();
    }

    private void verdict() {
        page.line(0, "");
        if (layout.status() == Status.IMPOSSIBLE) {
            page.item(Tone.BAD, "Nothing to take off:", "the site as drawn gives no lawful interconnection.");
            return;
        }
        boolean isOfResult = takeOff.origin() == Origin.RESULT_FILE;
        String route = isOfResult ? "the route of the result file" : found();
        takeOff.total()
                .ifPresentOrElse(
                        total -> page.item(Tone.GOOD, "Installed cost of " + route + ":", money(total.total()) + "."),
                        () -> page.item(
                                Tone.WARNING,
                                "Quantities of " + route + ", without a sum:",
                                takeOff.isPriced()
                                        ? "prices are missing, see NOT PRICED."
                                        : "no prices. Give a price book, or prices in the site file."));
        if (isOfResult) {
            page.item(
                    Tone.QUIET,
                    "Status as the result file states it:",
                    layout.status().label() + " " + layout.objective().label()
                            + ". To verify the route use review, to prove it least use route.");
        }
    }

    private String found() {
        return layout.status() == Status.LEAST
                ? "the least-" + layout.objective().label() + " route"
                : "the best route found";
    }

    private void quantities() {
        Table table = new Table(
                "item", "what", "size", "installed", ">net", ">make-up", ">waste", ">to buy", ">1,000 ft", ">weight");
        for (Row row : takeOff.rows()) {
            Quantity quantity = row.quantity();
            if (quantity.isLength()) {
                table.add(
                        List.of(
                                row.item(),
                                row.weight().isZero() ? "raceway" : "copper",
                                row.size().map(WireSize::label).orElse(""),
                                row.installation(),
                                number(quantity.net()),
                                number(quantity.makeUp()),
                                number(quantity.waste()),
                                number(quantity.purchase()),
                                TakeOffDetail.thousandFeet(quantity.purchase())
                                        .setScale(4, RoundingMode.HALF_UP)
                                        .toPlainString(),
                                row.weight().isZero() ? "" : Numbers.print(row.weight(), unit)),
                        List.of(ends(row)));
            }
        }
        page.table("Lengths", "in " + unit.symbol() + "; weights of what is bought, each rounded by itself", table);
    }

    private String ends(Row row) {
        return row.from().map(places::of).orElse("")
                + row.to().map(end -> " -> " + places.of(end)).orElse("");
    }

    private void counts() {
        Table table = new Table("item", ">count", "what", "at");
        for (Row row : takeOff.rows()) {
            if (!row.quantity().isLength()) {
                table.add(row.item(), String.valueOf(row.quantity().pieces()), row.description(), ends(row));
            }
        }
        page.table("Connections, taps and crossings", table);
    }

    private void costs() {
        if (!takeOff.isPriced()) {
            return;
        }
        Table table = new Table(
                "item", "what", ">price", "per", ">material", ">hours", ">labor", ">other", ">cost", "source");
        for (Row row : takeOff.rows()) {
            List<String> cells = List.of(
                    row.item(),
                    row.size()
                            .filter(size -> row.quantity().isLength())
                            .map(WireSize::label)
                            .orElse(row.description()),
                    cents(row.money().unitPrice()),
                    row.quantity().isLength() ? "1,000 ft" : "each",
                    cents(row.money().roundedMaterial()),
                    row.money().hours().map(Numbers::print).orElse(""),
                    cents(row.money().roundedLabor()),
                    cents(row.money().roundedOther()),
                    cents(row.money().cost()),
                    sources(row));
            table.add(cells, List.of());
        }
        page.table("Costs", "in " + takeOff.currency() + "; an empty cell is not priced", table);
        List<String> lines = new ArrayList<>();
        sources.forEach((source, number) -> lines.add(number + ": " + source));
        page.list("Sources of prices and hours", lines);
    }

    private String sources(Row row) {
        return Stream.of(row.money().priceSource(), row.money().laborSource())
                .filter(source -> !source.isEmpty())
                .distinct()
                .map(source -> String.valueOf(sources.computeIfAbsent(source, ignored -> sources.size() + 1)))
                .collect(Collectors.joining(", "));
    }

    private String money(Money money) {
        return Numbers.print(money, takeOff.currency());
    }

    private static String cents(Optional<Money> money) {
        return money.map(TakeOffText::number).orElse("");
    }

    private static String number(Money money) {
        return Numbers.print(money.amount());
    }

    private String number(Length length) {
        BigDecimal value = length.in(unit);
        return Numbers.print(value);
    }
}
