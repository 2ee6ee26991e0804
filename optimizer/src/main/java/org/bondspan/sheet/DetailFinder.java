package org.bondspan.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.site.PlanPoint;

/** Finds where the symbols of a plan crowd so much at its scale that an enlarged detail is due. */
final class DetailFinder {
    private static final int CROWD = 4;

    /** Two symbols nearer than this, in points, cover each other. */
    private static final double COVERING = 11;

    private DetailFinder() {}

    /**
     * Parts of the plan whose symbols stand closer than {@code near} points from one to the next, the most crowded
     * first.
     */
    static List<Bounds> crowds(Picture picture, double pointsPerNanometre, double near) {
        List<PlanPoint> places = picture.items().stream()
                .filter(item -> item instanceof Item.Mark mark && mark.symbol() != Symbol.COLUMN)
                .flatMap(item -> item.places().stream())
                .distinct()
                .toList();
        List<List<PlanPoint>> crowds = new ArrayList<>();
        Set<PlanPoint> free = new LinkedHashSet<>(places);
        for (PlanPoint place : places) {
            if (free.remove(place)) {
                crowds.add(gather(place, free, near / pointsPerNanometre));
            }
        }
        return crowds.stream()
                .filter(crowd -> crowd.size() >= CROWD || isCovering(crowd, COVERING / pointsPerNanometre))
                .sorted(Comparator.comparingInt((List<PlanPoint> crowd) -> -crowd.size()))
                .map(Bounds::around)
                .toList();
    }

    private static boolean isCovering(List<PlanPoint> crowd, double near) {
        return crowd.size() > 1 && crowd.stream().skip(1).anyMatch(place -> distance(place, crowd.get(0)) < near);
    }

    private static double distance(PlanPoint a, PlanPoint b) {
        return Math.hypot((double) a.x() - b.x(), (double) a.y() - b.y());
    }

    private static List<PlanPoint> gather(PlanPoint first, Set<PlanPoint> free, double near) {
        List<PlanPoint> crowd = new ArrayList<>(List.of(first));
        for (int i = 0; i < crowd.size(); i++) {
            PlanPoint from = crowd.get(i);
            List<PlanPoint> close =
                    free.stream().filter(to -> distance(from, to) < near).toList();
            close.forEach(free::remove);
            crowd.addAll(close);
        }
        return crowd;
    }
}
