package org.bondspan.review;

import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.code.SitePlaces;
import org.bondspan.site.Position;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.units.Length;

/** Lengths along a line whose measured length replaces the drawn one, shared out in proportion. */
final class MeasuredLine {
    private MeasuredLine() {}

    /** Length of the run between two places of the line; empty where they do not both lie on it. */
    static Optional<Length> find(CopperLine line, SitePlaces places, Position a, Position b) {
        Optional<Length> from = places.findDistance(line.id(), a);
        Optional<Length> to = places.findDistance(line.id(), b);
        if (from.isEmpty() || to.isEmpty() || line.measured().isEmpty()) {
            return Optional.empty();
        }
        long drawn = from.get().distanceTo(to.get()).nanometres();
        long whole = LineLengths.of(line.line()).nanometres();
        return Optional.of(
                Length.ofNanometres(LineLengths.share(line.measured().get().nanometres(), drawn, whole)));
    }
}
