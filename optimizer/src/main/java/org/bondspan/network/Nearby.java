package org.bondspan.network;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.bondspan.site.PlanPoint;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Finds what lies near a stretch in plan without looking at everything: a packed R-tree over envelopes. */
final class Nearby<T> {
    private final STRtree tree = new STRtree();

    private Nearby() {}

    static Nearby<PlanPoint> ofPlaces(Collection<PlanPoint> places) {
        return of(places, place -> new PlanSegment(place, place));
    }

    static <T> Nearby<T> of(Collection<T> items, Function<T, PlanSegment> plan) {
        Nearby<T> nearby = new Nearby<>();
        items.forEach(item -> nearby.tree.insert(envelope(plan.apply(item)), item));
        nearby.tree.build();
        return nearby;
    }

    /** Everything whose envelope comes within the tolerance of the segment's, in no order that matters. */
    @SuppressWarnings("unchecked") // only T goes into the tree
    List<T> near(PlanSegment segment) {
        return (List<T>) tree.query(envelope(segment));
    }

    /** A margin takes in places that count as the same, and the rounding of coordinates to doubles. */
    private static Envelope envelope(PlanSegment segment) {
        Envelope envelope = new Envelope(
                (double) segment.lowX(), (double) segment.highX(), (double) segment.lowY(), (double) segment.highY());
        envelope.expandBy((double) PlanSegment.SAME_PLACE);
        return envelope;
    }
}
