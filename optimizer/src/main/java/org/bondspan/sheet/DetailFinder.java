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

    /** Two symbols nearer than this, in points, cover each other; beside letters of 8 points. */
    private static final double COVERING = 14;

    /** Symbols nearer than this belong together. */
    private static final double NEAR = 30;

    /** A part of the plan that is to be enlarged, and how far its nearest symbols lie apart, in nanometres. */
    record Crowd(Bounds bounds, double closest) {}

    private DetailFinder() {}

    /** Parts of the plan whose symbols stand close from one to the next, the most crowded first. */
    static List<Crowd> crowds(Picture picture, double pointsPerNanometre, double letters) {
        double scale = Symbol.scale(letters) / pointsPerNanometre;
        List<PlanPoint> places = picture.items().stream()
                .filter(item -> item instanceof Item.Mark mark && mark.symbol() != Symbol.COLUMN)
                .flatMap(item -> item.places().stream())
                .distinct()
                .toList();
        List<List<PlanPoint>> crowds = new ArrayList<>();
        Set<PlanPoint> free = new LinkedHashSet<>(places);
        for (PlanPoint place : places) {
            if (free.remove(place)) {
                crowds.add(gather(place, free, NEAR * scale));
            }
        }
        return crowds.stream()
                .filter(crowd -> crowd.size() >= CROWD || closest(crowd) < COVERING * scale)
                .sorted(Comparator.comparingInt((List<PlanPoint> crowd) -> -crowd.size()))
                .map(crowd -> new Crowd(Bounds.around(crowd), closest(crowd)))
                .toList();
    }

    /** Between the two that are nearest to each other; infinite for one alone. */
    private static double closest(List<PlanPoint> crowd) {
        double closest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < crowd.size(); i++) {
            for (int j = 0; j < i; j++) {
                closest = Math.min(closest, distance(crowd.get(i), crowd.get(j)));
            }
        }
        return closest;
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
