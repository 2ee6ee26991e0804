package org.bondspan.sheet.plan;

import java.util.List;
import org.bondspan.site.PlanPoint;

/** One thing of a picture, in plan units; its id is that of the site or of the answer, so that it can be picked. */
public sealed interface Item {
    String id();

    Layer layer();

    /** Where it lies; at least one place. */
    List<PlanPoint> places();

    /** Where no conductor may run. */
    record Area(String id, Layer layer, List<PlanPoint> places) implements Item {
        public Area {
            places = List.copyOf(places);
        }
    }

    /** A line through these places; one place alone is not painted. */
    record Run(String id, Layer layer, LineKind kind, Pen pen, List<PlanPoint> places) implements Item {
        public Run {
            places = List.copyOf(places);
        }
    }

    /** A symbol; electrodes have letters in it. */
    record Mark(String id, Layer layer, Symbol symbol, String letters, PlanPoint at) implements Item {
        @Override
        public List<PlanPoint> places() {
            return List.of(at);
        }
    }
}
