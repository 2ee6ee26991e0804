package org.bondspan.report;

import java.util.List;
import org.bondspan.layout.End;
import org.bondspan.site.Position;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.Numbers;

/** Places and ends in words; coordinates in the unit of the site, without naming it. */
record Places(LengthUnit unit) {
    /** {@code L1 (5, 6, 3)}: level, east, north, height above its floor. */
    String of(Position position) {
        return position.level() + " " + point(position);
    }

    /** The vertices of a run; the level is named where it changes. */
    String of(List<Position> run) {
        StringBuilder words = new StringBuilder();
        String level = "";
        for (Position position : run) {
            words.append(words.isEmpty() ? "" : " ");
            words.append(position.level().equals(level) ? point(position) : of(position));
            level = position.level();
        }
        return words.toString();
    }

    String of(End end) {
        if (end instanceof End.AtService at) {
            return at.service() + at.connection().map(id -> " (" + id + ")").orElse("");
        }
        if (end instanceof End.AtElectrode at) {
            return at.electrode() + at.connection().map(id -> " (" + id + ")").orElse("");
        }
        if (end instanceof End.OnPath on) {
            return on.path()
                    + on.distance().map(along -> " at " + length(along)).orElse("");
        }
        if (end instanceof End.OnConductor on) {
            return "tap on " + on.conductor() + " at " + length(on.at());
        }
        if (end instanceof End.AtJoint at) {
            return "joint " + at.joint();
        }
        return of(((End.AtPlace) end).place());
    }

    private String length(Length length) {
        return Numbers.print(length, unit);
    }

    private String point(Position position) {
        return "("
                + number(Length.ofNanometres(position.at().x())) + ", "
                + number(Length.ofNanometres(position.at().y())) + ", "
                + number(position.height()) + ")";
    }

    private String number(Length length) {
        return Numbers.rounded(length.in(unit)).toPlainString();
    }
}
