package org.bondspan.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.price.CopperPrice;
import org.bondspan.price.PriceBook;
import org.bondspan.site.Evidence;
import org.bondspan.site.Site;
import org.bondspan.units.Numbers;

/** How a take-off was counted, at which prices, and what it rests on. */
final class Assumptions {
    private Assumptions() {}

    static List<String> list(Site site, Layout layout, Optional<PriceBook> book) {
        List<String> lines = new ArrayList<>();
        lines.add("Make-up: " + Numbers.print(site.makeUpPerEnd(), site.lengthUnit())
                + " at each end that lands on something; a tap adds none.");
        lines.add("Waste: " + site.wastePercent().toPlainString()
                + " % on what is bought, conductor and raceway; labor counts what is installed.");
        lines.add(
                "Weights: bare copper, Class B strand (ASTM B8), of what is bought. Each is rounded by itself, so that rows may not"
                        + " add up to the last digit.");
        lines.add("Conductors smaller than 6 AWG are in raceway over their whole length, make-up included.");
        lines.add(
                "What lies below the lowest floor counts as buried. Trench, backfill and supervision are not included.");
        book.ifPresent(prices -> lines.addAll(prices(site, prices)));
        List<String> assumed =
                layout.assumed().stream().map(Evidence::of).distinct().toList();
        if (!assumed.isEmpty()) {
            lines.add("Assumed, not verified: " + String.join(", ", assumed) + ".");
        }
        return lines;
    }

    private static List<String> prices(Site site, PriceBook book) {
        List<String> lines = new ArrayList<>();
        lines.add("Prices: " + book.name() + (book.note().isEmpty() ? "" : ". " + book.note()));
        book.copper().map(CopperPrice::describe).ifPresent(lines::add);
        book.labor()
                .ifPresent(labor -> lines.add("labor at " + labor.perHour().toPlainString() + " per hour"
                        + (labor.source().isEmpty() ? "" : "; " + labor.source())));
        book.heights()
                .forEach(height -> lines.add("labor times " + height.factor().toPlainString() + " above "
                        + Numbers.print(height.above(), site.lengthUnit()) + " from the floor"));
        lines.add("Unit prices are rounded to the cent per 1,000 ft and per piece; each row is rounded to the cent, the"
                + " total is rounded once.");
        return lines;
    }
}
