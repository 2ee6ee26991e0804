package org.bondspan.network;

import org.bondspan.site.PlanPoint;

/**
 * A straight piece of a frame or pipe on a level: a column or rising pipe at one place, a beam or a run of pipe.
 *
 * @param fromElevation elevation at the start; on a column its bottom
 * @param toElevation elevation at the end; on a column its top
 * @param fromDistance along the pipe at the start; 0 on a frame
 * @param toDistance along the pipe at the end; 0 on a frame
 */
record MetalPiece(
        String path,
        int level,
        PlanSegment plan,
        long fromElevation,
        long toElevation,
        long fromDistance,
        long toDistance) {
    /** Copper lands on it between its ends: on columns and beams, and on pipes that neither slope nor run obliquely. */
    boolean takesCopperAlong() {
        boolean level = plan.isPlace() || fromElevation == toElevation;
        return level && (!plan.isOblique() || isBeam());
    }

    /** Copper lands on it at that place. */
    boolean takesCopperAt(PlanPoint place) {
        boolean end = place.equals(plan.from()) || place.equals(plan.to());
        return end || (takesCopperAlong() && plan.contains(place));
    }

    private boolean isBeam() {
        return fromDistance == toDistance;
    }

    /** What a stack gets where the piece passes a place that lies on it. */
    Stack.Metal at(PlanPoint place) {
        if (plan.isPlace()) {
            return fromElevation <= toElevation
                    ? new Stack.Metal(path, fromElevation, toElevation, fromDistance, toDistance)
                    : new Stack.Metal(path, toElevation, fromElevation, toDistance, fromDistance);
        }
        double share = place.equals(plan.to()) ? 1 : plan.share(place);
        long elevation = fromElevation + Math.round(share * (toElevation - fromElevation));
        long distance = fromDistance + Math.round(share * (toDistance - fromDistance));
        return new Stack.Metal(path, elevation, elevation, distance, distance);
    }
}
