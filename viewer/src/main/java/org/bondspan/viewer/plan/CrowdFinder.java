package org.bondspan.viewer.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.bondspan.sheet.plan.Bounds;
import org.bondspan.sheet.plan.Item;
import org.bondspan.sheet.plan.Layer;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.sheet.plan.PlanView;

/** Finds where conductors crowd in a view: groups of short ones, each near to the next. Lengths in points. */
final class CrowdFinder {
    /** So few short conductors find room for their words. */
    private static final int FEW = 3;

    private static final double NEAR = 14;

    /** What is longer than this is a row and no crowd: a box around it would hide half of the plan. */
    private static final double LONGEST = 90;

    private final Picture seen;
    private final double pointsPerNanometre;

    private CrowdFinder(Picture seen, double pointsPerNanometre) {
        this.seen = seen;
        this.pointsPerNanometre = pointsPerNanometre;
    }

    /** Those of the items that are seen in a view in points. */
    static Crowds find(Picture seen, PlanView view) {
        return new CrowdFinder(seen, view.pointsPerNanometre()).find();
    }

    private Crowds find() {
        List<Crowd> crowds = new ArrayList<>();
        Set<String> apart = new HashSet<>();
        for (List<Span> group : groups(shortSpans())) {
            List<String> ids = group.stream().map(Span::id).toList();
            Bounds bounds =
                    group.stream().map(Span::bounds).reduce(CrowdFinder::around).orElseThrow();
            if (group.size() <= FEW) {
                apart.addAll(ids);
            } else if (points(bounds) <= LONGEST && longerSide(bounds) >= Camera.CLOSEST) {
                // Where no camera comes near enough to tell them apart, nothing is won by looking nearer.
                crowds.add(crowd(bounds, ids));
            }
        }
        return new Crowds(crowds, apart);
    }

    private record Span(String id, Bounds bounds) {}

    private List<Span> shortSpans() {
        Map<String, Bounds> conductors = new LinkedHashMap<>();
        for (Item item : seen.items()) {
            if (item instanceof Item.Run && item.layer() == Layer.CONDUCTORS) {
                conductors.merge(item.id(), Bounds.around(item.places()), CrowdFinder::around);
            }
        }
        return conductors.entrySet().stream()
                .map(entry -> new Span(entry.getKey(), entry.getValue()))
                .filter(one -> points(one.bounds()) < Crowds.SHORTEST)
                .toList();
    }

    private double points(Bounds bounds) {
        return longerSide(bounds) * pointsPerNanometre;
    }

    private static double longerSide(Bounds bounds) {
        return Math.max(bounds.width(), bounds.height());
    }

    private List<List<Span>> groups(List<Span> all) {
        List<List<Span>> groups = new ArrayList<>();
        List<Span> free = new ArrayList<>(all);
        while (!free.isEmpty()) {
            List<Span> group = new ArrayList<>(List.of(free.remove(0)));
            for (int i = 0; i < group.size(); i++) {
                Bounds from = group.get(i).bounds();
                List<Span> close = free.stream()
                        .filter(one -> apart(from, one.bounds()) < NEAR)
                        .toList();
                free.removeAll(close);
                group.addAll(close);
            }
            groups.add(all.stream().filter(group::contains).toList());
        }
        return groups;
    }

    private double apart(Bounds a, Bounds b) {
        double east = Math.max(0, Math.max((double) a.west() - b.east(), (double) b.west() - a.east()));
        double north = Math.max(0, Math.max((double) a.south() - b.north(), (double) b.south() - a.north()));
        return Math.hypot(east, north) * pointsPerNanometre;
    }

    private Crowd crowd(Bounds bounds, List<String> conductors) {
        long around = Math.round(Crowd.AROUND / pointsPerNanometre);
        Bounds box = new Bounds(
                bounds.west() - around, bounds.south() - around, bounds.east() + around, bounds.north() + around);
        List<String> ends = Stream.of(Layer.SERVICES, Layer.ELECTRODES)
                .flatMap(layer -> seen.items().stream().filter(item -> item.layer() == layer))
                .filter(item -> item instanceof Item.Mark mark && box.contains(mark.at()))
                .map(Item::id)
                .distinct()
                .toList();
        return new Crowd(bounds, conductors, ends, box);
    }

    private static Bounds around(Bounds a, Bounds b) {
        return new Bounds(
                Math.min(a.west(), b.west()),
                Math.min(a.south(), b.south()),
                Math.max(a.east(), b.east()),
                Math.max(a.north(), b.north()));
    }
}
