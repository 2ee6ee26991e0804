package org.bondspan.code;

import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Within {@link LineLengths#SAME_PLACE}, in x, in y and in height, two places are one. */
public final class SamePlace {
    private SamePlace() {}

    public static boolean isSame(Position a, Position b) {
        return a.level().equals(b.level()) && isSame(a.at(), b.at()) && isSame(a.height(), b.height());
    }

    public static boolean isSame(PlanPoint a, PlanPoint b) {
        return isNear(a.x(), b.x()) && isNear(a.y(), b.y());
    }

    /** Heights, or distances along one line. */
    public static boolean isSame(Length a, Length b) {
        return isNear(a.nanometres(), b.nanometres());
    }

    private static boolean isNear(long a, long b) {
        return Math.abs(a - b) <= LineLengths.SAME_PLACE.nanometres();
    }
}
