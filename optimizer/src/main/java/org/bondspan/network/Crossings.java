package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.bondspan.site.PlanPoint;

/**
 * Places where metal is met in plan, away from anyone's vertices: a copper line over a beam or a pipe, a beam over a
 * pipe. Two copper lines that only cross do not meet.
 */
final class Crossings {
    private final List<MetalPiece> metal;
    private final List<LinePiece> lines;
    private final Nearby<MetalPiece> nearby;

    Crossings(List<MetalPiece> metal, List<LinePiece> lines) {
        this.metal = metal.stream().filter(piece -> !piece.plan().isPlace()).toList();
        this.lines = lines;
        this.nearby = Nearby.of(this.metal, MetalPiece::plan);
    }

    /** Hands on the level and place of every crossing; some more than once. */
    void forEach(BiConsumer<Integer, PlanPoint> action) {
        for (LinePiece line : lines) {
            crossed(line.plan(), line.level())
                    .forEach(piece -> line.plan()
                            .findCrossing(piece.plan())
                            .ifPresent(place -> action.accept(line.level(), place)));
        }
        for (MetalPiece piece : metal) {
            crossed(piece.plan(), piece.level()).stream()
                    .filter(other -> !other.path().equals(piece.path()))
                    .forEach(other -> piece.plan()
                            .findCrossing(other.plan())
                            .ifPresent(place -> action.accept(piece.level(), place)));
        }
    }

    private List<MetalPiece> crossed(PlanSegment plan, int level) {
        List<MetalPiece> found = new ArrayList<>(nearby.near(plan));
        found.removeIf(piece -> piece.level() != level);
        return found;
    }
}
