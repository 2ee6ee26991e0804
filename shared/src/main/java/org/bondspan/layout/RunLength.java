package org.bondspan.layout;

import java.util.List;
import org.bondspan.units.Length;

/** The length of a conductor by what it is spent on. */
public record RunLength(Length plan, Length vertical, Length makeUp, Length jumper) {
    public static final RunLength ZERO = new RunLength(Length.ZERO, Length.ZERO, Length.ZERO, Length.ZERO);

    public Length total() {
        return plan.plus(vertical).plus(makeUp).plus(jumper);
    }

    public RunLength plus(RunLength other) {
        return new RunLength(
                plan.plus(other.plan),
                vertical.plus(other.vertical),
                makeUp.plus(other.makeUp),
                jumper.plus(other.jumper));
    }

    public static RunLength sum(List<RunLength> parts) {
        return parts.stream().reduce(ZERO, RunLength::plus);
    }
}
