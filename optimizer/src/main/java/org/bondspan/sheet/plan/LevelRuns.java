package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;

/** The parts of a run of positions that lie on one level, seen from above. */
final class LevelRuns {
    private LevelRuns() {}

    /** The stretches on that level, each with at least one place, without places that follow upon themselves. */
    static List<List<PlanPoint>> of(List<Position> line, String level) {
        List<List<PlanPoint>> runs = new ArrayList<>();
        List<PlanPoint> run = new ArrayList<>();
        for (Position position : line) {
            if (!position.level().equals(level)) {
                close(run, runs);
                run = new ArrayList<>();
            } else if (run.isEmpty() || !run.get(run.size() - 1).equals(position.at())) {
                run.add(position.at());
            }
        }
        close(run, runs);
        return runs;
    }

    private static void close(List<PlanPoint> run, List<List<PlanPoint>> runs) {
        if (!run.isEmpty()) {
            runs.add(run);
        }
    }

    /** Where the run rises or falls in one plan place, to another level or on this one. */
    static Set<PlanPoint> verticals(List<Position> line, String level) {
        Set<PlanPoint> places = new LinkedHashSet<>();
        for (int i = 1; i < line.size(); i++) {
            Position a = line.get(i - 1);
            Position b = line.get(i);
            boolean touches = a.level().equals(level) || b.level().equals(level);
            if (touches && a.at().equals(b.at()) && !a.equals(b)) {
                places.add(a.at());
            }
        }
        return places;
    }
}
