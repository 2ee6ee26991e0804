package org.bondspan.network;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.bondspan.site.PlanPoint;

/** Puts frames and pipes into the stacks of all places that lie on them. */
final class MetalStacks {
    private final List<LevelPlan> plans;
    private final Stacks stacks;

    MetalStacks(List<LevelPlan> plans, Stacks stacks) {
        this.plans = plans;
        this.stacks = stacks;
    }

    void add(List<MetalPiece> metal) {
        for (int level = 0; level < plans.size(); level++) {
            Set<PlanPoint> candidates = new LinkedHashSet<>(plans.get(level).cuts());
            candidates.addAll(stacks.listPlaces(level));
            Nearby<PlanPoint> places = Nearby.ofPlaces(candidates);
            for (MetalPiece piece : metal) {
                if (piece.level() == level) {
                    add(piece, places);
                }
            }
        }
    }

    private void add(MetalPiece piece, Nearby<PlanPoint> places) {
        Set<PlanPoint> on = new LinkedHashSet<>();
        on.add(piece.plan().from());
        on.add(piece.plan().to());
        places.near(piece.plan()).stream().filter(piece::takesCopperAt).forEach(on::add);
        if (!piece.plan().isOblique() && !piece.plan().isPlace() && piece.takesCopperAlong()) {
            plans.get(piece.level()).grid().ifPresent(floor -> on.addAll(floor.placesAlong(piece.plan())));
        }
        on.forEach(place -> stacks.at(piece.level(), place).addMetal(piece.at(place)));
    }
}
