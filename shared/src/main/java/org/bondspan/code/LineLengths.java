package org.bondspan.code;

import java.math.BigInteger;
import java.util.List;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.units.Length;

/** Lengths along a drawn line, rising and falling runs included. */
public final class LineLengths {
    private LineLengths() {}

    /** The whole line. */
    public static Length of(Line line) {
        List<LineVertex> vertices = line.vertices();
        Length sum = Length.ZERO;
        for (int i = 1; i < vertices.size(); i++) {
            sum = sum.plus(between(vertices.get(i - 1), vertices.get(i)));
        }
        return sum;
    }

    /** One straight run. */
    public static Length between(LineVertex a, LineVertex b) {
        return Length.ofRun(
                b.at().x() - a.at().x(),
                b.at().y() - a.at().y(),
                b.height().nanometres() - a.height().nanometres());
    }

    /** The place so far from {@code a} on the straight run to {@code b}, rounded to the base unit. */
    public static LineVertex along(LineVertex a, LineVertex b, Length distance) {
        long whole = between(a, b).nanometres();
        if (distance.nanometres() >= whole) {
            return b;
        }
        return new LineVertex(
                new PlanPoint(
                        between(a.at().x(), b.at().x(), distance, whole),
                        between(a.at().y(), b.at().y(), distance, whole)),
                Length.ofNanometres(between(a.height().nanometres(), b.height().nanometres(), distance, whole)));
    }

    private static long between(long a, long b, Length distance, long whole) {
        return a + share(b - a, distance.nanometres(), whole);
    }

    /** {@code amount * part / whole}, rounded to the nearest whole number, halves up; exact in between. */
    public static long share(long amount, long part, long whole) {
        BigInteger doubled =
                BigInteger.valueOf(amount).multiply(BigInteger.valueOf(part)).shiftLeft(1);
        BigInteger divisor = BigInteger.valueOf(whole);
        BigInteger[] quotient = doubled.add(divisor).divideAndRemainder(divisor.shiftLeft(1));
        long floor = quotient[0].longValueExact();
        return quotient[1].signum() < 0 ? floor - 1 : floor;
    }
}
