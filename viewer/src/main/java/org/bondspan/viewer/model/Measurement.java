package org.bondspan.viewer.model;

import java.util.Optional;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.viewer.state.Desk;
import org.bondspan.viewer.state.Measure;

/** What the measuring tool says. */
public final class Measurement {
    private Measurement() {}

    /** Empty while nothing is measured. */
    public static Optional<String> find(Desk desk) {
        LengthUnit unit =
                desk.opened().map(opened -> opened.site().lengthUnit()).orElse(LengthUnit.FOOT);
        return desk.look().measure().map(measure -> words(measure, unit));
    }

    private static String words(Measure measure, LengthUnit unit) {
        if (measure.to().isEmpty()) {
            return "Choose the second place";
        }
        return straight(measure, unit) + ", " + along(measure, unit);
    }

    public static String straight(Measure measure, LengthUnit unit) {
        return Numbers.print(measure.straight(), unit) + " straight";
    }

    public static String along(Measure measure, LengthUnit unit) {
        if (measure.along().isEmpty()) {
            return "looking for a way of copper";
        }
        return measure.along()
                .get()
                .way()
                .map(way -> Numbers.print(way.length(), unit) + " along permitted copper")
                .orElse("no way of copper");
    }
}
