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

    /**
     * A line through these places; one place alone is not painted.
     *
     * @param aside how far to its left each straight stretch is painted, in points, so that lines that would cover each
     *     other stand side by side; empty where all stay in their places
     */
    record Run(String id, Layer layer, LineKind kind, Pen pen, List<PlanPoint> places, List<Float> aside)
            implements Item {
        public Run {
            places = List.copyOf(places);
            aside = List.copyOf(aside);
            if (!aside.isEmpty() && aside.size() != places.size() - 1) {
                throw new IllegalArgumentException(aside.size() + " stretches of " + places.size() + " places");
            }
        }

        /** In its true place. */
        public Run(String id, Layer layer, LineKind kind, Pen pen, List<PlanPoint> places) {
            this(id, layer, kind, pen, places, List.of());
        }

        Run beside(List<Float> otherAside) {
            return new Run(id, layer, kind, pen, places, otherAside);
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
