package org.bondspan.viewer.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.LineKind;
import org.bondspan.sheet.plan.Note;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.Symbol;
import org.bondspan.site.PlanPoint;

/** A picture put together by hand; places in metres. */
final class Drawn {
    static final long METRE = 1_000_000_000L;
    static final Set<Layer> ALL = Set.of(Layer.values());

    private final List<Item> items = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    /** A hall of 40 by 20 m with a service, a rod, and a conductor between them along the south wall. */
    static Picture hall() {
        return new Drawn()
                .run("L1", Layer.BUILDING, LineKind.WALL, 0, 0, 40, 0, 40, 20, 0, 20, 0, 0)
                .area("shaft", 10, 8, 14, 8, 14, 12, 10, 12)
                .run("wall-tray", Layer.ALLOWED_COPPER, LineKind.ALLOWED_COPPER, 2, 2, 38, 2)
                .run("C1", Layer.CONDUCTORS, LineKind.GROUNDING_ELECTRODE_CONDUCTOR, 2, 2, 38, 2)
                .mark("rod", Layer.ELECTRODES, Symbol.ELECTRODE, 38, 2)
                .mark("service", Layer.SERVICES, Symbol.SERVICE, 2, 2)
                .note("service", Layer.SERVICES, Note.Kind.SERVICE, 2, 2)
                .note("C1", Layer.CONDUCTORS, Note.Kind.CONDUCTOR, 10, 2, 20, 2, 30, 2)
                .note("rod", Layer.ELECTRODES, Note.Kind.ELECTRODE, 38, 2)
                .picture();
    }

    static PlanPoint at(double x, double y) {
        return new PlanPoint(Math.round(x * METRE), Math.round(y * METRE));
    }

    Drawn run(String id, Layer layer, LineKind kind, double... places) {
        items.add(new Item.Run(id, layer, kind, kind.pen(), places(places)));
        return this;
    }

    Drawn area(String id, double... places) {
        items.add(new Item.Area(id, Layer.CLOSED_AREAS, places(places)));
        return this;
    }

    Drawn mark(String id, Layer layer, Symbol symbol, double x, double y) {
        items.add(new Item.Mark(id, layer, symbol, "", at(x, y)));
        return this;
    }

    Drawn note(String id, Layer layer, Note.Kind kind, double... anchors) {
        notes.add(new Note(id, layer, kind, List.of(id, "second line"), places(anchors)));
        return this;
    }

    private static List<PlanPoint> places(double... coordinates) {
        List<PlanPoint> places = new ArrayList<>();
        for (int i = 0; i < coordinates.length; i += 2) {
            places.add(at(coordinates[i], coordinates[i + 1]));
        }
        return places;
    }

    Picture picture() {
        items.sort(Comparator.comparing(Item::layer));
        return new Picture("L1", items, notes);
    }
}
