package org.bondspan.takeoff;

import java.util.List;
import java.util.Optional;
import org.bondspan.layout.Layout;
import org.bondspan.price.PriceBook;

/**
 * The quantities of a route, and what they cost.
 *
 * @param origin where the route is from
 * @param groups the same rows by size and kind
 * @param total empty without prices, and where one is missing
 * @param missing prices that are not stated, each as file, field and message
 * @param assumptions how it was counted and at which prices
 */
public record TakeOff(
        Origin origin,
        Layout layout,
        Optional<PriceBook> prices,
        List<Row> rows,
        List<Group> groups,
        Optional<Total> total,
        List<String> missing,
        List<String> assumptions) {
    public TakeOff {
        rows = List.copyOf(rows);
        groups = List.copyOf(groups);
        missing = List.copyOf(missing);
        assumptions = List.copyOf(assumptions);
    }

    /** Where a route is from. */
    public enum Origin {
        /** Just found and, as far as its status says, proven. */
        FOUND,
        /** Read from a result file, which states its status. */
        RESULT_FILE
    }

    public boolean isPriced() {
        return prices.isPresent();
    }

    /** As the price book has it; empty without. */
    public String currency() {
        return prices.map(PriceBook::currency).orElse("");
    }
}
