package org.bondspan.takeoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.price.PriceBook;
import org.bondspan.price.Rates;
import org.bondspan.site.Site;
import org.bondspan.units.ExactMoney;
import org.bondspan.units.Money;
import org.bondspan.units.WireSize;

/** Takes off a route: rows from the answer alone, independent of how it was found. */
public final class TakingOff {
    private final TakeOff.Origin origin;
    private final Site site;
    private final Layout layout;
    private final Optional<Rates> rates;

    private TakingOff(TakeOff.Origin origin, Site site, Layout layout, Optional<PriceBook> book) {
        this.origin = origin;
        this.site = site;
        this.layout = layout;
        this.rates = book.map(Rates::new);
    }

    /** Of a route just found; without prices quantities only. */
    public static TakeOff of(Site site, Layout layout, Optional<PriceBook> book) {
        return new TakingOff(TakeOff.Origin.FOUND, site, layout, book).takeOff();
    }

    /** Of the route of a result file, at the prices of the site if it has any. */
    public static TakeOff ofResult(Site site, Layout layout) {
        return new TakingOff(TakeOff.Origin.RESULT_FILE, site, layout, site.prices()).takeOff();
    }

    private TakeOff takeOff() {
        Optional<PriceBook> book = rates.map(Rates::book);
        Optional<Pricing> pricing = rates.map(each -> new Pricing(each, site.wastePercent()));
        LengthRows lengths = new LengthRows(site, book.map(PriceBook::heights).orElse(List.of()), pricing);
        List<Row> rows = new ArrayList<>();
        layout.conductors().forEach(conductor -> rows.addAll(lengths.of(conductor)));
        rows.addAll(new PieceRows(site, layout, book, pricing).list());
        List<String> missing = rates.map(Rates::missing).orElse(List.of());
        return new TakeOff(
                origin,
                layout,
                book,
                rows,
                groups(rows),
                rates.isPresent() && missing.isEmpty() ? Optional.of(total(rows)) : Optional.empty(),
                missing,
                Assumptions.list(site, layout, book));
    }

    private static List<Group> groups(List<Row> rows) {
        List<Group> groups = new ArrayList<>();
        rows.stream()
                .filter(row -> row.kind() == RowKind.CONDUCTOR)
                .flatMap(row -> row.size().stream())
                .distinct()
                .sorted(Comparator.reverseOrder())
                .forEach(size -> groups.add(Group.of(size.label(), ofSize(rows, size))));
        addKind(groups, "raceway", rows, RowKind.RACEWAY);
        addKind(groups, "connections", rows, RowKind.CONNECTION);
        addKind(groups, "taps", rows, RowKind.TAP);
        addKind(groups, "splices", rows, RowKind.SPLICE);
        addKind(groups, "wall crossings", rows, RowKind.WALL);
        return groups;
    }

    private static List<Row> ofSize(List<Row> rows, WireSize size) {
        return rows.stream()
                .filter(row -> row.kind() == RowKind.CONDUCTOR && row.size().equals(Optional.of(size)))
                .toList();
    }

    private static void addKind(List<Group> groups, String name, List<Row> rows, RowKind kind) {
        List<Row> own = rows.stream().filter(row -> row.kind() == kind).toList();
        if (!own.isEmpty()) {
            groups.add(Group.of(name, own));
        }
    }

    private static Total total(List<Row> rows) {
        Group all = Group.of("all", rows);
        ExactMoney exact = rows.stream().map(row -> row.money().exact()).reduce(ExactMoney.ZERO, ExactMoney::plus);
        Money rounding = exact.rounded().minus(all.cost());
        BigDecimal hours = all.hours();
        return new Total(exact, all.material(), hours, all.labor(), all.other(), rounding);
    }
}
