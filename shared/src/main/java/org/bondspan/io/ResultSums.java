package org.bondspan.io;

import java.math.BigDecimal;
import java.util.List;
import org.bondspan.code.MeasuredLines;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.Copper;
import org.bondspan.layout.Piece;
import org.bondspan.layout.RunLength;
import org.bondspan.layout.SizeTotal;
import org.bondspan.layout.Status;
import org.bondspan.site.Level;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;
import org.bondspan.units.Weight;
import org.bondspan.units.WireSize;

/**
 * Whether the numbers of a result agree with each other, as far as their rounding to 0.01 lets one tell. A result that
 * was edited is not taken for what was found.
 */
final class ResultSums {
    private static final String AGAIN = "Route the site again, or correct the number";

    private final Site site;
    private final LengthUnit unit;
    private final long rounding;
    private final Length mostSaved;

    ResultSums(Site site, LengthUnit unit) {
        this.site = site;
        this.unit = unit;
        this.rounding = unit.nanometres() / 200;
        this.mostSaved = new MeasuredLines(site).mostSaved();
    }

    /** Of the four parts and the total. */
    void checkTotal(Fields fields, Length total, RunLength parts) {
        if (isApart(total, parts.total(), 5)) {
            fields.report("total", "is " + print(total) + ", but its parts add up to " + print(parts.total()), AGAIN);
        }
    }

    void checkConductor(Fields fields, Conductor conductor) {
        RunLength length = conductor.length();
        Length run = length.plan().plus(length.vertical()).plus(length.jumper());
        Length line = drawn(conductor.line()).minus(mostSaved);
        if (run.isLessThan(line) && isApart(run, line, 4 + 2 * conductor.line().size())) {
            fields.report("length", "is " + print(run) + " without make-up, but its line takes " + print(line), AGAIN);
        }
        Length pieces = conductor.pieces().stream().map(Piece::length).reduce(Length.ZERO, Length::plus);
        if (!conductor.pieces().isEmpty()
                && isApart(pieces, length.total(), 4 + conductor.pieces().size())) {
            fields.report("pieces", "add up to " + print(pieces) + ", not to " + print(length.total()), AGAIN);
        }
    }

    private Length drawn(List<Position> line) {
        Length sum = Length.ZERO;
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            sum = sum.plus(Length.ofRun(
                    b.at().x() - a.at().x(),
                    b.at().y() - a.at().y(),
                    elevation(b).minus(elevation(a)).nanometres()));
        }
        return sum;
    }

    /** A level that the site does not have is reported where it is read. */
    private Length elevation(Position place) {
        return site.levels().stream()
                .filter(level -> level.id().equals(place.level()))
                .findFirst()
                .map(Level::floor)
                .orElse(Length.ZERO)
                .plus(place.height());
    }

    /** Of every size the length and the weight, and the sums of all. */
    void checkSums(Fields fields, Status status, List<Conductor> conductors, List<SizeTotal> sizes, Copper copper) {
        for (WireSize size : WireSize.values()) {
            List<Conductor> own = conductors.stream()
                    .filter(conductor -> conductor.size() == size)
                    .toList();
            Length needed = total(own);
            Length told = sizes.stream()
                    .filter(row -> row.size() == size)
                    .map(SizeTotal::length)
                    .reduce(Length.ZERO, Length::plus);
            if (isApart(told, needed, 1 + 4 * own.size())) {
                fields.report(
                        "sizes",
                        "have " + print(told) + " of " + size.label() + ", but the conductors " + print(needed),
                        AGAIN);
            }
        }
        Weight weight = weight(conductors);
        long parts = 1 + 4L * conductors.size();
        if (status != Status.IMPOSSIBLE && isApart(copper.length(), total(conductors), parts)) {
            fields.report(
                    "copper.length",
                    "is " + print(copper.length()) + ", but the conductors have " + print(total(conductors)),
                    AGAIN);
        }
        if (status != Status.IMPOSSIBLE && isApart(copper.weight(), weight, conductors)) {
            fields.report(
                    "copper.weight",
                    "is " + Numbers.print(copper.weight(), unit) + ", but the conductors weigh "
                            + Numbers.print(weight, unit),
                    AGAIN);
        }
        for (SizeTotal row : sizes) {
            Weight own = Weight.of(row.size(), row.length());
            if (isApart(row.weight(), own, conductors)) {
                fields.report(
                        "sizes",
                        "have " + Numbers.print(row.weight(), unit) + " of "
                                + row.size().label() + ", but " + print(row.length()) + " weigh "
                                + Numbers.print(own, unit),
                        AGAIN);
            }
        }
    }

    private static Length total(List<Conductor> conductors) {
        return RunLength.sum(conductors.stream().map(Conductor::length).toList())
                .total();
    }

    private static Weight weight(List<Conductor> conductors) {
        return conductors.stream()
                .map(conductor -> Weight.of(conductor.size(), conductor.length().total()))
                .reduce(Weight.ZERO, Weight::plus);
    }

    private boolean isApart(Length a, Length b, long roundings) {
        return Math.abs(a.nanometres() - b.nanometres()) > roundings * rounding;
    }

    /** The weight itself is rounded, and every part of every length. */
    private boolean isApart(Weight a, Weight b, List<Conductor> conductors) {
        Weight ofLengths = conductors.stream()
                .map(conductor -> Weight.of(conductor.size(), Length.ofNanometres(4 * rounding)))
                .reduce(Weight.of(new BigDecimal("0.01"), unit), Weight::plus);
        return a.in(unit).subtract(b.in(unit)).abs().compareTo(ofLengths.in(unit)) > 0;
    }

    private String print(Length length) {
        return Numbers.print(length, unit);
    }
}
