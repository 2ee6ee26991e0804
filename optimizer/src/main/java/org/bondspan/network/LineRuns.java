package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.bondspan.network.LinePiece.Cut;
import org.bondspan.site.PlanPoint;

/** Lays the runs of copper lines and installed conductors: each straight piece is cut where something lies on it. */
final class LineRuns {
    private final NetworkArrays arrays;
    private final List<LevelPlan> plans;
    private final Stacks stacks;
    private final TouchingLines touching;
    private final Set<Integer> things;
    private final Map<Integer, InstalledAt> installedAt;
    private int oblique = Direction.FIRST_OBLIQUE;

    /**
     * @param things gets every node at which a line is joined
     * @param installedAt gets every node at which an installed conductor lies
     */
    LineRuns(
            NetworkArrays arrays,
            List<LevelPlan> plans,
            Stacks stacks,
            TouchingLines touching,
            Set<Integer> things,
            Map<Integer, InstalledAt> installedAt) {
        this.arrays = arrays;
        this.plans = plans;
        this.stacks = stacks;
        this.touching = touching;
        this.things = things;
        this.installedAt = installedAt;
    }

    void add(List<LinePiece> pieces) {
        List<Nearby<PlanPoint>> cuts =
                plans.stream().map(plan -> Nearby.ofPlaces(plan.cuts())).toList();
        for (LinePiece piece : pieces) {
            add(piece, cuts.get(piece.level()));
        }
    }

    private void add(LinePiece piece, Nearby<PlanPoint> cuts) {
        int direction = direction(piece);
        Cut before = piece.start();
        int nodeBefore = node(piece, before);
        for (Cut cut : cutPiece(piece, cuts)) {
            int node = node(piece, cut);
            addRun(piece, nodeBefore, node, cut.length() - before.length(), direction);
            before = cut;
            nodeBefore = node;
        }
    }

    private void addRun(LinePiece piece, int a, int b, long length, int direction) {
        if (a == b) {
            return;
        }
        piece.installed()
                .ifPresentOrElse(
                        size -> arrays.addInstalledRun(a, b, direction, piece.path(), size),
                        () -> arrays.addLineRun(a, b, length, direction, piece.path()));
    }

    private int direction(LinePiece piece) {
        if (piece.plan().isPlace()) {
            return Direction.VERTICAL;
        }
        if (piece.plan().isOblique() || piece.fromElevation() != piece.toElevation()) {
            return oblique++;
        }
        return piece.plan().isAlongX() ? Direction.X : Direction.Y;
    }

    /** All cuts after the start, in order; the last is the end. */
    private List<Cut> cutPiece(LinePiece piece, Nearby<PlanPoint> cuts) {
        TreeSet<Cut> between = new TreeSet<>();
        if (!piece.plan().isPlace()) {
            List<PlanPoint> places = new ArrayList<>(cuts.near(piece.plan()));
            if (piece.joinsFloorAllAlong()) {
                plans.get(piece.level()).grid().ifPresent(floor -> places.addAll(floor.placesAlong(piece.plan())));
            }
            places.stream()
                    .filter(place -> !piece.hasVertexAt(place) && piece.plan().contains(place))
                    .map(piece::cutAt)
                    .forEach(between::add);
        }
        List<Cut> ordered = new ArrayList<>(between);
        ordered.add(piece.end());
        return ordered;
    }

    private int node(LinePiece piece, Cut cut) {
        boolean floorHere = plans.get(piece.level()).floorNodeAt(cut.at()) != FloorGrid.NONE;
        int node;
        if (floorHere && !piece.joinsFloorAt(cut.at())) {
            node = touching.nodeAt(piece, cut);
        } else {
            node = stacks.nodeAt(piece.level(), cut.at(), cut.elevation());
            things.add(node);
        }
        piece.installed()
                .ifPresent(size -> installedAt.merge(node, new InstalledAt(piece.path(), size), InstalledAt::largerOf));
        return node;
    }
}
