package org.bondspan.viewer.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Work;

/** How a search goes, in words. */
public final class Progress {
    private Progress() {}

    /** {@code Solving: best 539.10 lb, at least 501.22 lb, gap 7.56 %}; empty while nothing is under way. */
    public static Optional<String> find(Desk desk) {
        LengthUnit unit =
                desk.opened().map(opened -> opened.site().lengthUnit()).orElse(LengthUnit.FOOT);
        return desk.work().map(work -> words(work, unit));
    }

    private static String words(Work work, LengthUnit unit) {
        String what = work.stopping() ? work.what() + ", stopping" : work.what();
        return what + work.reached().map(reached -> ": " + words(reached, unit)).orElse("");
    }

    private static String words(Work.Reached reached, LengthUnit unit) {
        String words =
                "best " + Numbers.print(reached.best(), unit) + ", at least " + Numbers.print(reached.bound(), unit);
        if (reached.bound().isZero()) {
            return words;
        }
        BigDecimal gap = new BigDecimal(
                        reached.best().grains().subtract(reached.bound().grains()))
                .movePointRight(2)
                .divide(new BigDecimal(reached.bound().grains()), 2, RoundingMode.CEILING);
        return words + ", gap " + gap.toPlainString() + " %";
    }
}
