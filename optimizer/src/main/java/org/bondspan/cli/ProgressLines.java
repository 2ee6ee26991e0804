package org.bondspan.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;

/** Tells on standard error how a long search goes, a line a second at most, nothing in the first second. */
final class ProgressLines {
    private static final long NANOSECONDS_BETWEEN_LINES = 1_000_000_000;

    private final Streams streams;
    private final LengthUnit unit;
    private long last = System.nanoTime();

    ProgressLines(Streams streams, LengthUnit unit) {
        this.streams = streams;
        this.unit = unit;
    }

    void report(Weight best, Weight bound) {
        long now = System.nanoTime();
        if (now - last >= NANOSECONDS_BETWEEN_LINES) {
            last = now;
            streams.tell("best so far " + Numbers.print(best, unit) + ", at least " + Numbers.print(bound, unit)
                    + gap(best, bound) + "\n");
        }
    }

    private static String gap(Weight best, Weight bound) {
        if (bound.isZero()) {
            return "";
        }
        BigDecimal percent = new BigDecimal(best.grains().subtract(bound.grains()))
                .movePointRight(2)
                .divide(new BigDecimal(bound.grains()), 2, RoundingMode.CEILING);
        return ", gap " + percent.toPlainString() + " %";
    }
}
