package org.bondspan.io;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.SitePath.Beam;

/** Columns and beams of a frame. */
record Members(List<PlanPoint> columns, List<Beam> beams) {
    Members {
        columns = List.copyOf(columns);
        beams = List.copyOf(beams);
    }

    /** A column at each crossing, a beam between neighbours; crossings that are one place are one column. */
    static Members ofGrid(List<List<PlanPoint>> crossings) {
        Set<PlanPoint> columns = new LinkedHashSet<>();
        Set<Beam> beams = new LinkedHashSet<>();
        for (int i = 0; i < crossings.size(); i++) {
            List<PlanPoint> line = crossings.get(i);
            for (int j = 0; j < line.size(); j++) {
                columns.add(line.get(j));
                if (j > 0) {
                    beams.add(new Beam(line.get(j - 1), line.get(j)));
                }
                if (i > 0) {
                    beams.add(new Beam(crossings.get(i - 1).get(j), line.get(j)));
                }
            }
        }
        beams.removeIf(beam -> beam.from().equals(beam.to()));
        return new Members(new ArrayList<>(columns), new ArrayList<>(beams));
    }
}
