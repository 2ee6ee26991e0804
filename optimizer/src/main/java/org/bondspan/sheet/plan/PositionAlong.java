package org.bondspan.sheet.plan;

import java.util.List;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.units.Length;

/** A place along a run of positions, for drawing: rounded to the nanometre on sloping runs. */
final class PositionAlong {
    private PositionAlong() {}

    /** So far from the first position, heights included; the last position where the run is shorter. */
    static Position of(Site site, List<Position> line, Length distance) {
        double left = (double) distance.nanometres();
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            double length = (double) length(site, a, b).nanometres();
            if (length > 0 && left <= length) {
                return between(a, b, left / length);
            }
            left -= length;
        }
        return line.get(line.size() - 1);
    }

    private static Length length(Site site, Position a, Position b) {
        return Length.ofRun(
                b.at().x() - a.at().x(),
                b.at().y() - a.at().y(),
                elevation(site, b).minus(elevation(site, a)).nanometres());
    }

    private static Length elevation(Site site, Position place) {
        return site.level(place.level()).floor().plus(place.height());
    }

    private static Position between(Position a, Position b, double share) {
        long height = a.height().nanometres();
        long rise = a.level().equals(b.level()) ? b.height().nanometres() - height : 0;
        return new Position(
                a.level(),
                Anchors.between(a.at(), b.at(), share),
                Length.ofNanometres(height + Math.round(share * (double) rise)));
    }
}
