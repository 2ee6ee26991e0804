package org.bondspan.code;

import java.util.List;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
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
}
