package org.bondspan.solve;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * A connected part of a tree, to be taken out and replaced by something better: whole ways between places where the
 * tree branches or a leaf lands. What is left of the tree falls into limbs, one at each place where the part ends or
 * more hangs.
 */
final class Window {

    private final TreeWeb web;
    private final BitSet edges = new BitSet();
    private final List<Integer> places = new ArrayList<>();
    private final BitSet inside = new BitSet();

    private Window(TreeWeb web) {
        this.web = web;
    }

    /** Grown breadth first round a place, as long as there are no more limbs than this; empty if there is no way. */
    static Window round(TreeWeb web, int centre, int mostLimbs) {
        Window window = new Window(web);
        Deque<Integer> open = new ArrayDeque<>();
        BitSet seen = new BitSet();
        open.add(centre);
        seen.set(centre);
        while (!open.isEmpty()) {
            int place = open.remove();
            List<Integer> ends = window.expand(place, mostLimbs);
            ends.stream().filter(end -> !seen.get(end)).forEach(end -> {
                seen.set(end);
                open.add(end);
            });
        }
        return window;
    }

    /** Adds all ways from a place, unless there would be too many limbs; returns where they end. */
    private List<Integer> expand(int place, int mostLimbs) {
        BitSet newEdges = new BitSet();
        List<Integer> newPlaces = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        if (!inside.get(place)) {
            newPlaces.add(place);
        }
        for (int i = 0; i < web.edgeCount(place); i++) {
            int edge = web.edge(place, i);
            if (!edges.get(edge)) {
                ends.add(follow(place, edge, newEdges, newPlaces));
            }
        }
        edges.or(newEdges);
        places.addAll(newPlaces);
        newPlaces.forEach(inside::set);
        if (limbs().size() > mostLimbs) {
            edges.andNot(newEdges);
            places.removeAll(newPlaces);
            newPlaces.forEach(inside::clear);
            return List.of();
        }
        return ends;
    }

    private int follow(int from, int first, BitSet newEdges, List<Integer> newPlaces) {
        int edge = first;
        int at = web.other(edge, from);
        newEdges.set(edge);
        newPlaces.add(at);
        while (!web.isKey(at)) {
            edge = web.edge(at, 0) == edge ? web.edge(at, 1) : web.edge(at, 0);
            at = web.other(edge, at);
            newEdges.set(edge);
            newPlaces.add(at);
        }
        return at;
    }

    /** Places at which a limb begins. */
    List<Integer> limbs() {
        return places.stream().filter(this::isLimb).toList();
    }

    private boolean isLimb(int place) {
        if (web.leafCount(place) > 0) {
            return true;
        }
        for (int i = 0; i < web.edgeCount(place); i++) {
            if (!edges.get(web.edge(place, i))) {
                return true;
            }
        }
        return false;
    }

    /** Edges of the tree in the part, by their number in the tree. */
    BitSet edges() {
        return edges;
    }

    /** All places in the part. */
    List<Integer> places() {
        return places;
    }

    TreeWeb web() {
        return web;
    }
}
