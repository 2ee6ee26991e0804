package org.bondspan.code;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.units.Length;

/** Lengths along a drawn line, rising and falling runs included. */
public final class LineLengths {
    /** Within 0.05 ft, two places of a plan are one. */
    public static final Length SAME_PLACE = Length.ofNanometres(15_240_000L);

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

    /** The place so far along the line; its end where the line is shorter. */
    public static LineVertex placeAt(Line line, Length distance) {
        List<LineVertex> vertices = line.vertices();
        Length rest = distance;
        for (int i = 1; i < vertices.size(); i++) {
            Length run = between(vertices.get(i - 1), vertices.get(i));
            if (!run.isLessThan(rest)) {
                return along(vertices.get(i - 1), vertices.get(i), rest);
            }
            rest = rest.minus(run);
        }
        return vertices.get(vertices.size() - 1);
    }

    /**
     * How far along the line a place lies, if it lies on it to within 0.05 ft; the first such where it passes twice.
     */
    public static Optional<Length> findDistance(Line line, PlanPoint at, Length height) {
        List<LineVertex> vertices = line.vertices();
        LineVertex place = new LineVertex(at, height);
        Length before = Length.ZERO;
        for (int i = 1; i < vertices.size(); i++) {
            LineVertex a = vertices.get(i - 1);
            LineVertex b = vertices.get(i);
            Length run = between(a, b);
            Length share = nearest(a, b, place);
            LineVertex onRun = along(a, b, share);
            if (isNear(onRun.at().x(), at.x())
                    && isNear(onRun.at().y(), at.y())
                    && isNear(onRun.height().nanometres(), height.nanometres())) {
                return Optional.of(before.plus(share));
            }
            before = before.plus(run);
        }
        return Optional.empty();
    }

    /** Likewise of a place on a level. */
    public static Optional<Length> findDistance(Line line, Position place) {
        return line.level().equals(place.level()) ? findDistance(line, place.at(), place.height()) : Optional.empty();
    }

    /** How far along a straight run on one level a place lies, if it lies on it to within 0.05 ft. */
    public static Optional<Length> findDistance(Position a, Position b, Position place) {
        boolean isRun = a.level().equals(b.level()) && !a.equals(b);
        List<LineVertex> ends = List.of(new LineVertex(a.at(), a.height()), new LineVertex(b.at(), b.height()));
        return isRun ? findDistance(new Line(a.level(), ends), place) : Optional.empty();
    }

    /** Distance from {@code a} of the place of the run nearest to the given one. */
    private static Length nearest(LineVertex a, LineVertex b, LineVertex place) {
        BigInteger dot = product(b.at().x() - a.at().x(), place.at().x() - a.at().x())
                .add(product(b.at().y() - a.at().y(), place.at().y() - a.at().y()))
                .add(product(
                        b.height().nanometres() - a.height().nanometres(),
                        place.height().nanometres() - a.height().nanometres()));
        long whole = between(a, b).nanometres();
        long share = dot.divide(BigInteger.valueOf(whole)).longValueExact();
        return Length.ofNanometres(Math.max(0, Math.min(whole, share)));
    }

    private static BigInteger product(long a, long b) {
        return BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
    }

    private static boolean isNear(long a, long b) {
        return Math.abs(a - b) <= SAME_PLACE.nanometres();
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
