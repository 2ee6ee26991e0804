package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.LineLengths;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.SitePath.CopperLine;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/** Takes copper lines and installed conductors apart into straight pieces. */
final class LinePieces {
    private LinePieces() {}

    /** Along it new copper may run; a measured length is shared out in proportion to the drawn one. */
    static List<LinePiece> of(CopperLine copper, int level, long floor) {
        return pieces(copper.id(), copper.line(), level, floor, copper.measured(), Optional.empty());
    }

    static List<LinePiece> of(InstalledConductor conductor, int level, long floor) {
        return pieces(conductor.id(), conductor.line(), level, floor, Optional.empty(), Optional.of(conductor.size()));
    }

    private static List<LinePiece> pieces(
            String path, Line line, int level, long floor, Optional<Length> measured, Optional<WireSize> installed) {
        List<LineVertex> vertices = line.vertices();
        long drawn = LineLengths.of(line).nanometres();
        List<LinePiece> pieces = new ArrayList<>();
        long along = 0;
        for (int i = 1; i < vertices.size(); i++) {
            LineVertex a = vertices.get(i - 1);
            LineVertex b = vertices.get(i);
            long next = along + LineLengths.between(a, b).nanometres();
            pieces.add(new LinePiece(
                    path,
                    level,
                    new PlanSegment(a.at(), b.at()),
                    floor + a.height().nanometres(),
                    floor + b.height().nanometres(),
                    scaled(along, drawn, measured),
                    scaled(next, drawn, measured),
                    measured.isPresent(),
                    i == 1,
                    i == vertices.size() - 1,
                    installed));
            along = next;
        }
        return pieces;
    }

    private static long scaled(long along, long drawn, Optional<Length> measured) {
        return measured.map(length -> LineLengths.share(length.nanometres(), along, drawn))
                .orElse(along);
    }
}
