package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.bondspan.site.PlanPoint;

/** Places along a line that words may point to. */
final class Anchors {
    private Anchors() {}

    /** On the longest straight runs of a line, from their middles outwards; the place itself where it has no extent. */
    static List<PlanPoint> along(List<PlanPoint> line) {
        List<Integer> runs = IntStream.range(1, line.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -length(line.get(i - 1), line.get(i))))
                .filter(i -> length(line.get(i - 1), line.get(i)) > 0)
                .limit(3)
                .toList();
        if (runs.isEmpty()) {
            return List.of(line.get(0));
        }
        List<PlanPoint> anchors = new ArrayList<>();
        for (int run : runs) {
            for (double share : new double[] {0.5, 0.3, 0.7, 0.15, 0.85}) {
                anchors.add(between(line.get(run - 1), line.get(run), share));
            }
        }
        return anchors;
    }

    static PlanPoint between(PlanPoint from, PlanPoint to, double share) {
        return new PlanPoint(
                from.x() + Math.round(share * (double) (to.x() - from.x())),
                from.y() + Math.round(share * (double) (to.y() - from.y())));
    }

    static double length(PlanPoint from, PlanPoint to) {
        return Math.hypot((double) to.x() - from.x(), (double) to.y() - from.y());
    }
}
