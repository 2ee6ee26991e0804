package org.bondspan.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;
import org.bondspan.finding.Finding;
import org.bondspan.layout.Layout;
import org.bondspan.takeoff.Quantity;
import org.bondspan.takeoff.Row;
import org.bondspan.takeoff.RowMoney;
import org.bondspan.takeoff.TakeOff;
import org.bondspan.takeoff.TakeOff.Origin;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Money;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/**
 * The rows of a take-off as cells: texts, numbers, and empty texts for what is not known. Texts that a spreadsheet
 * could take for a formula begin with an apostrophe.
 */
final class TakeOffDetail {
    private static final Pattern FORMULA = Pattern.compile("^\\s*[=+\\-@\\t\\r\\n|%].*", Pattern.DOTALL);

    private final LengthUnit unit;
    private final Places places;
    private final String currency;
    private final TakeOff takeOff;
    private final Layout layout;

    TakeOffDetail(TakeOff takeOff) {
        this.takeOff = takeOff;
        this.layout = takeOff.layout();
        this.unit = takeOff.layout().lengthUnit();
        this.places = new Places(unit);
        this.currency = takeOff.currency();
    }

    List<String> headings() {
        return List.of(
                "line",
                "section",
                "kind",
                "item",
                "description",
                "size",
                "installation",
                "from",
                "to",
                "net_length",
                "make_up",
                "waste",
                "purchase_quantity",
                "unit",
                "purchase_1000_ft",
                "weight",
                "weight_unit",
                "price_per",
                "unit_price",
                "material",
                "unit_hours",
                "hours_factor",
                "labor_hours",
                "labor",
                "other",
                "cost",
                "currency",
                "price_source",
                "labor_source");
    }

    List<Object> cells(int line, Row row) {
        Quantity quantity = row.quantity();
        RowMoney money = row.money();
        List<Object> cells = new ArrayList<>(List.of(
                line,
                row.kind().section(),
                row.kind().name().toLowerCase(Locale.ROOT),
                text(row.item()),
                text(row.description()),
                row.size().map(WireSize::label).orElse(""),
                text(row.installation()),
                text(row.from().map(places::of).orElse("")),
                text(row.to().map(places::of).orElse(""))));
        if (quantity.isLength()) {
            cells.addAll(List.of(
                    length(quantity.net()),
                    length(quantity.makeUp()),
                    length(quantity.waste()),
                    length(quantity.purchase()),
                    unit.symbol(),
                    thousandFeet(quantity.purchase())));
        } else {
            cells.addAll(List.of("", "", "", quantity.pieces(), "EA", ""));
        }
        boolean weighs = !row.weight().isZero();
        cells.add(weighs ? Numbers.rounded(row.weight().in(unit)) : "");
        cells.add(weighs ? unit.weightSymbol() : "");
        cells.add(quantity.isLength() ? "1000 ft" : "each");
        cells.add(money(money.unitPrice()));
        cells.add(money(money.roundedMaterial()));
        cells.add(money.unitHours().<Object>map(TakeOffDetail::plain).orElse(""));
        cells.add(money.unitHours().<Object>map(hours -> plain(money.factor())).orElse(""));
        cells.add(money.hours().<Object>map(TakeOffDetail::hours).orElse(""));
        cells.add(money(money.roundedLabor()));
        cells.add(money(money.roundedOther()));
        cells.add(money(money.cost()));
        cells.add(money.cost().isPresent() ? currency : "");
        cells.add(text(money.priceSource()));
        cells.add(text(money.laborSource()));
        return cells;
    }

    /**
     * What holds of the whole take-off, as rows that state no quantity and no money: a kind, words in place of the
     * description, and for a finding its subject as the item. The first has that line.
     */
    List<List<Object>> notes(int firstLine) {
        List<List<Object>> notes = new ArrayList<>();
        BiConsumer<String, List<String>> add =
                (kind, lines) -> lines.forEach(words -> notes.add(note(firstLine + notes.size(), kind, "", words)));
        add.accept("site", List.of(layout.site()));
        add.accept("scope", List.of(layout.codeEdition().describe(layout.adoption())));
        add.accept("status", List.of(status()));
        add.accept("assumption", takeOff.assumptions());
        add.accept("not_priced", takeOff.missing());
        for (Finding finding : layout.findings()) {
            String words = finding.severity().label() + ", " + finding.rule() + ": " + finding.message();
            notes.add(note(firstLine + notes.size(), "finding", finding.subject(), words));
        }
        add.accept("not_checked", layout.notChecked());
        add.accept("caution", layout.cautions());
        return notes;
    }

    private List<Object> note(int line, String kind, String item, String words) {
        List<Object> cells = new ArrayList<>(Collections.nCopies(headings().size(), ""));
        cells.set(headings().indexOf("line"), line);
        cells.set(headings().indexOf("kind"), kind);
        cells.set(headings().indexOf("item"), text(item));
        cells.set(headings().indexOf("description"), text(words));
        return cells;
    }

    /** How sure it is that the route is least, and who says so. */
    String status() {
        String least = "least " + layout.objective().label();
        String words = switch (layout.status()) {
            case LEAST -> least + ", proven";
            case BEST_FOUND ->
                "best found, not proven " + least + ": at most " + Numbers.print(layout.gapPercent()) + " % above it";
            case IMPOSSIBLE -> "impossible: no lawful interconnection of the site as drawn";
        };
        return takeOff.origin() == Origin.RESULT_FILE ? words + "; as the result file states it" : words;
    }

    /** On one line, without control characters, and no formula. */
    static String text(String words) {
        String safe = Page.printable(words);
        boolean formula =
                FORMULA.matcher(words).matches() || FORMULA.matcher(safe).matches();
        return formula ? "'" + safe : safe;
    }

    BigDecimal length(Length length) {
        return Numbers.rounded(length.in(unit));
    }

    static BigDecimal thousandFeet(Length length) {
        return plain(length.in(LengthUnit.FOOT).movePointLeft(3).setScale(5, RoundingMode.HALF_UP));
    }

    static BigDecimal hours(BigDecimal hours) {
        return plain(hours.setScale(4, RoundingMode.HALF_UP));
    }

    private static Object money(Optional<Money> money) {
        return money.<Object>map(Money::amount).orElse("");
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
