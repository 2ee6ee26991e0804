package org.bondspan.sheet.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.bondspan.site.PlanPoint;

/** Places inside an outline where its name may stand. */
final class PlacesInside {
    private PlacesInside() {}

    /** In the middle of the widest part at several heights, the widest part first; a vertex where there is none. */
    static List<PlanPoint> of(List<PlanPoint> outline) {
        Bounds bounds = Bounds.around(outline);
        List<PlanPoint> places = new ArrayList<>();
        for (double share : new double[] {0.5, 0.4, 0.6, 0.25, 0.75}) {
            addWidest(outline, bounds.south() + share * bounds.height(), places);
        }
        return places.isEmpty() ? outline.subList(0, 1) : places;
    }

    private static void addWidest(List<PlanPoint> outline, double y, List<PlanPoint> places) {
        List<Double> crossings = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint a = outline.get(i);
            PlanPoint b = outline.get((i + 1) % outline.size());
            if ((double) a.y() <= y != (double) b.y() <= y) {
                crossings.add(a.x() + (y - (double) a.y()) / (double) (b.y() - a.y()) * (double) (b.x() - a.x()));
            }
        }
        Collections.sort(crossings);
        double widest = 0;
        double middle = 0;
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double width = crossings.get(i + 1) - crossings.get(i);
            if (width > widest) {
                widest = width;
                middle = crossings.get(i) + width / 2;
            }
        }
        if (widest > 0) {
            places.add(new PlanPoint(Math.round(middle), Math.round(y)));
        }
    }
}
